package slackchat

import (
	"regexp"
	"strings"
	"unicode/utf8"

	"github.com/slack-go/slack"
)

// maxTyped is the most characters of a message that are passed on: far more
// than a question has, so that whoever reads one that was cut sees at once
// that it is too long, and does not take a part of it for the whole.
const maxTyped = 8_000

var (
	// marked is the platform's markup (platform documentation, formatting
	// message text): a sign or an address, and after a bar how it is shown.
	marked   = regexp.MustCompile(`<([^<>|]+)(?:\|([^<>]*))?>`)
	entities = strings.NewReplacer("&lt;", "<", "&gt;", ">", "&amp;", "&")
)

// typed turns a message as the platform sends it into what the person typed,
// the bot's own mention taken off.
func typed(raw, self string) string {
	raw = strings.ReplaceAll(raw, ownMention, "")
	raw = keepArborist(raw)
	text := marked.ReplaceAllStringFunc(raw, func(m string) string {
		parts := marked.FindStringSubmatch(m)
		if parts[1] == "@"+self {
			return ownMention
		}
		return shown(parts[1], parts[2])
	})
	text = strings.TrimSpace(aroundOwn.ReplaceAllString(entities.Replace(text), " "))
	if utf8.RuneCountInString(text) > maxTyped {
		text = string([]rune(text)[:maxTyped])
	}
	return text
}

// namedArborist is a person named as the arborist: their id is kept, for it
// says who may confirm, and anybody can take a name.
var namedArborist = regexp.MustCompile(`(?i)(\barborista?\b(?:\s+(?:on\s+site|here|calificad[oa]))?(?:\s+(?:is|es))?\s*[:=]?\s*)<@([A-Z0-9]+)(?:\|[^<>]*)?>(\.?\s+(?:and\b|y\b)?)?`)

// keepArborist writes a person who is named as the arborist by their id, and a
// comma behind it where more follows: a mention ends where it ends, a name
// would go on.
func keepArborist(raw string) string {
	return namedArborist.ReplaceAllStringFunc(raw, func(m string) string {
		part := namedArborist.FindStringSubmatch(m)
		behind := part[3]
		if behind != "" && strings.TrimLeft(behind, ". \t\r\n") == "" {
			behind = ", "
		}
		return part[1] + "@" + part[2] + behind
	})
}

// shown is how the platform shows a piece of markup; names it does not send
// along are left general.
func shown(what, label string) string {
	sign, rest := what[0], what[1:]
	switch {
	case sign == '@':
		return "@" + or(label, "someone")
	case sign == '#':
		return "#" + or(label, "channel")
	case sign == '!' && strings.HasPrefix(rest, "subteam"):
		return "@" + strings.TrimPrefix(or(label, "group"), "@")
	case sign == '!' && strings.HasPrefix(rest, "date"):
		return label
	case sign == '!':
		return "@" + rest
	}
	return or(label, what)
}

func or(s, otherwise string) string {
	if s != "" {
		return s
	}
	return otherwise
}

// ownMention stands for the bot's mention until it is taken off.
const ownMention = "\x00"

// aroundOwn is the mention with the blanks about it, and the comma or colon
// of an address.
var aroundOwn = regexp.MustCompile(`\s*\x00[:,]*\s*`)

// options say how a reply is posted: every letter as it is. The three signs that begin markup are escaped; formatting, the search
// for names and links, and previews are off. So nothing that a person typed
// and the reply repeats can ping a channel or dress itself up.
func options(text string) []slack.MsgOption {
	return []slack.MsgOption{
		slack.MsgOptionText(text, true),
		slack.MsgOptionDisableMarkdown(),
		slack.MsgOptionParse(false),
		slack.MsgOptionLinkNames(false),
		slack.MsgOptionDisableLinkUnfurl(),
		slack.MsgOptionDisableMediaUnfurl(),
	}
}
