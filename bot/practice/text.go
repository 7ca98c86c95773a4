package practice

import (
	"regexp"
	"slices"
	"strings"

	"heft/bot/standin"
)

// span is a run of words of one look. The template escapes them: nothing
// that was said ever becomes markup of the page.
type span struct {
	Words string
	Look  string // "", strong, em, code or name
}

var (
	// angled is the workspace's markup: a sign or an address, and after a bar
	// how it is shown (documented: formatting message text).
	angled = regexp.MustCompile(`<([^<>|]+)(?:\|([^<>]*))?>`)
	// dressed is formatting, at the begin of a word: *strong*, _emphasis_,
	// code between ticks.
	dressed  = regexp.MustCompile("(?:^|[\\s(,.;:])(\\*[^*\\n]+\\*|_[^_\\n]+_|`[^`\\n]+`)")
	entities = strings.NewReplacer("&lt;", "<", "&gt;", ">", "&amp;", "&")
)

// spans reads a text as the workspace keeps it. Names and addresses are
// words here: there is nobody to ping, and no page to lead to.
func (b *builder) spans(text string, plain bool) []span {
	var list []span
	add := func(s string) {
		if plain {
			list = append(list, span{Words: entities.Replace(s)})
			return
		}
		list = append(list, dress(s)...)
	}
	from := 0
	for _, at := range angled.FindAllStringSubmatchIndex(text, -1) {
		add(text[from:at[0]])
		label := ""
		if at[4] >= 0 {
			label = text[at[4]:at[5]]
		}
		list = append(list, span{Words: b.name(text[at[2]:at[3]], entities.Replace(label)), Look: "name"})
		from = at[1]
	}
	add(text[from:])
	return list
}

// known is an id of somebody, as the desk says it where it took one down.
var known = regexp.MustCompile(`\bU[A-Z0-9]{8,}\b`)

// said reads a text of the desk's: whoever of the crew it has by their id is
// called by name.
func (b *builder) said(text string, plain bool) []span {
	list := b.spans(text, plain)
	for i := range list {
		list[i].Words = known.ReplaceAllStringFunc(list[i].Words, b.who)
	}
	return list
}

// name is how a piece of markup is shown.
func (b *builder) name(what, label string) string {
	switch {
	case strings.HasPrefix(what, "#") && slices.Contains(jobs, what[1:]):
		return b.Say(what[1:])
	case strings.HasPrefix(what, "@"):
		return "@" + b.who(what[1:])
	case label != "":
		return label
	case strings.HasPrefix(what, "!"):
		return "@" + what[1:]
	}
	return entities.Replace(what)
}

// dress splits a text at its formatting.
func dress(s string) []span {
	var list []span
	from := 0
	for _, at := range dressed.FindAllStringSubmatchIndex(s, -1) {
		if at[2] > from {
			list = append(list, span{Words: entities.Replace(s[from:at[2]])})
		}
		look := map[byte]string{'*': "strong", '_': "em", '`': "code"}[s[at[2]]]
		list = append(list, span{Words: entities.Replace(s[at[2]+1 : at[3]-1]), Look: look})
		from = at[3]
	}
	if from < len(s) {
		list = append(list, span{Words: entities.Replace(s[from:])})
	}
	return list
}

// spoken is a text object as spans.
func (b *builder) spoken(t *standin.Text) []span {
	if t == nil {
		return nil
	}
	return b.said(t.Text, t.Plain())
}
