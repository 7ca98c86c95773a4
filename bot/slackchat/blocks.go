package slackchat

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackutilsx"

	"heft/bot"
)

// Limits of blocks, in characters (platform documentation, Block Kit, the
// page of each block and element).
const (
	maxSection = 3000
	maxValue   = 2000
	maxLabel   = 75
	maxRow     = 8 // as many as an ask-back lists: two lines on a phone
)

// Rows of buttons, by the beginning of their blocks' ids; behind it stands the
// mark of the picture that hangs under the answer.
const (
	rowChoices = "choices"
	rowActions = "actions"
	rowConfirm = "confirm"
	rowShare   = "share"
)

// dressed finds what the platform would read as formatting, were it not
// plain.
var dressed = regexp.MustCompile("[*_~`@#]|:[A-Za-z0-9_+'-]+:|^>|://")

// blocks are a reply as it is looked at: the first line bold, then the rest,
// the reminder small, and the buttons. What a person typed is plain text in
// all of them: no markup is read in it. The id is the entry's, for whoever
// stands by the reply or shares it, where it is private; without one nobody
// can.
func blocks(reply bot.Reply, id string, private bool) []slack.Block {
	head := reply.Headline()
	rest := strings.Split(strings.TrimPrefix(strings.TrimPrefix(reply.Text(), head), "\n"), "\n")
	out := []slack.Block{slack.NewSectionBlock(called(reply, head, bold), nil, nil)}
	if user, line := reply.ConfirmedBy(); line > 0 {
		out = append(out, slack.NewContextBlock("", naming(rest[line-1], user)))
		rest = slices.Delete(rest, line-1, line)
	}
	last := len(rest) - 1
	for _, text := range sections(rest[:last]) {
		out = append(out, slack.NewSectionBlock(called(reply, text, plain), nil, nil))
	}
	out = append(out, slack.NewContextBlock("", plain(rest[last])))
	seen := mark(reply)
	out = append(out, row(rowChoices, seen, reply.Choices())...)
	out = append(out, row(rowActions, seen, reply.Actions())...)
	by, _ := reply.ConfirmedBy()
	switch {
	case private:
		out = append(out, row(rowShare, "", []bot.Choice{{Label: reply.Voice().Share(), Message: id}})...)
	case by == "" && id != "" && reply.ToConfirm():
		out = append(out, row(rowConfirm, "", []bot.Choice{{Label: reply.Voice().Confirm(), Message: id}})...)
	}
	return out
}

// naming is a line in which a person is named as the platform names them,
// unless it holds other signs. It is somebody who acted just now, or an edited
// message, which makes nobody's phone buzz.
func naming(line, user string) *slack.TextBlockObject {
	if dressed.MatchString(strings.Replace(line, "@"+user, "", 1)) {
		return plain(line)
	}
	text := strings.Replace(slackutilsx.EscapeMessage(line), "@"+user, "<@"+user+">", 1)
	return slack.NewTextBlockObject(slack.MarkdownType, text, false, true)
}

// person is how the platform numbers people.
var person = regexp.MustCompile(`^[UW][A-Z0-9]{4,20}$`)

// called is text in which the arborist of the job is named as the platform
// names them, who hears that way that it is they; else as it is set otherwise.
func called(reply bot.Reply, text string, otherwise func(string) *slack.TextBlockObject) *slack.TextBlockObject {
	if text, who := byID(text, reply); who != "" {
		return naming(text, who)
	}
	return otherwise(text)
}

// byID puts an @ and the platform's number of somebody for the words that
// name them, where they are known by one.
func byID(text string, of interface{ Named() (who, words string) }) (named, who string) {
	who, words := of.Named()
	if !person.MatchString(who) || !strings.Contains(text, words) {
		return text, ""
	}
	return strings.Replace(text, words, "@"+who, 1), who
}

func plain(text string) *slack.TextBlockObject {
	return slack.NewTextBlockObject(slack.PlainTextType, clipped(text, maxSection), false, false)
}

// bold is a line in bold weight. One with signs that would be read as
// formatting inside is left plain.
func bold(line string) *slack.TextBlockObject {
	escaped := "*" + slackutilsx.EscapeMessage(line) + "*"
	if dressed.MatchString(line) || utf8.RuneCountInString(escaped) > maxSection {
		return plain(line)
	}
	return slack.NewTextBlockObject(slack.MarkdownType, escaped, false, true)
}

// sections put lines together as far as a section holds them.
func sections(lines []string) []string {
	if all := strings.Join(lines, "\n"); len(all) <= maxSection && len(lines) > 0 && lines[0] != "" {
		return []string{all} // most replies
	}
	var out []string
	for _, line := range lines {
		line = clipped(line, maxSection)
		if n := len(out); n > 0 && utf8.RuneCountInString(out[n-1])+1+utf8.RuneCountInString(line) <= maxSection {
			out[n-1] += "\n" + line
			continue
		}
		if line != "" {
			out = append(out, line)
		}
	}
	return out
}

// row is a row of buttons. A button that the platform would not take is left
// out: its question can still be typed.
func row(name, seen string, choices []bot.Choice) []slack.Block {
	var buttons []slack.BlockElement
	for i, c := range choices {
		label, value := utf8.RuneCountInString(c.Label), utf8.RuneCountInString(c.Message)
		if label == 0 || label > maxLabel || strings.TrimSpace(c.Message) == "" || value > maxValue || len(buttons) == maxRow {
			continue
		}
		text := slack.NewTextBlockObject(slack.PlainTextType, c.Label, false, false)
		buttons = append(buttons, slack.NewButtonBlockElement(fmt.Sprintf("%s/%d", name, i), c.Message, text))
	}
	if len(buttons) == 0 {
		return nil
	}
	return []slack.Block{slack.NewActionBlock(name+"/"+seen, buttons...)}
}

// mark names what a picture of the reply shows; empty for no picture.
func mark(reply bot.Reply) string {
	if reply.Scene() == nil {
		return ""
	}
	shown, err := json.Marshal(reply.Scene())
	if err != nil {
		return "" // then it counts as new
	}
	sum := sha256.Sum256(shown)
	return hex.EncodeToString(sum[:8])
}
