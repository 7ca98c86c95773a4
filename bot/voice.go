package bot

import (
	"errors"
	"strings"
	"time"
	"unicode"
)

// Voice says what the surfaces of a workspace say besides replies, in one
// language.
type Voice struct{ s speaker }

// VoiceOf speaks a language by its tag; an unknown one is English.
func VoiceOf(tag string) Voice { return Voice{speaker{language: tag}} }

// Tag is the tag of the language.
func (v Voice) Tag() string { return v.s.tag() }

// Say and Word say a sentence, and what has no parts, for a surface that words
// more than its captions: the day's sheet.
func (v Voice) Say(sentence string, parts ...any) string { return v.s.say(sentence, parts...) }
func (v Voice) Word(word string) string                  { return v.s.word(word) }

// Voice is what the reply is spoken in.
func (r Reply) Voice() Voice { return Voice{r.voice} }

// Confirm is the button with which somebody stands by an answer.
func (v Voice) Confirm() string { return v.s.word("Confirmed on site") }

// ConfirmForm are the words of the form that asks for a note.
func (v Voice) ConfirmForm() (title, note, submit, cancel string) {
	return v.s.word("Confirmed on site"), v.s.word("A note, if there is one"), v.s.word("Confirm"), v.s.word("Cancel")
}

// confirmedBy are the lines of a confirmed answer.
func (v Voice) confirmedBy(c Confirmation, in *time.Location) []string {
	lines := []string{v.s.say("Confirmed on site by %s at %s.", "@"+c.User, c.At.In(in).Format("15:04"))}
	if c.Note != "" {
		lines = append(lines, v.s.say("Note: %s", oneLine(c.Note)))
	}
	return lines
}

// oneLine takes out of somebody's words what is no sign to be read.
func oneLine(words string) string {
	return strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return ' '
		}
		return r
	}, words)
}

// Declined says to one person why an answer was not confirmed.
func (v Voice) Declined(err error, e Entry) string {
	var reserved *Reserved
	switch {
	case errors.As(err, &reserved) && reserved.Arborist != "":
		return v.s.say("Not confirmed. Only the arborist, %s, or a supervisor confirms that.", quote(reserved.Arborist))
	case errors.Is(err, ErrNotYours):
		return v.s.word("Not confirmed. Only a supervisor confirms that here: no arborist is named. Name one like “job: arborist Dana”.")
	case errors.Is(err, ErrConfirmed) && e.Confirmed != nil:
		return v.s.say("It is confirmed already, by %s.", "@"+e.Confirmed.User)
	case errors.Is(err, ErrChanged), errors.Is(err, ErrNotLogged):
		return v.s.word("The answer has changed meanwhile. Look at the new one first.")
	}
	return v.s.word("I cannot write that down just now. Try again in a minute.")
}

// Raised tells a supervisor of an answer over the limit.
func (v Voice) Raised(r Reply) string {
	return v.s.say("Over the limit, and nobody has confirmed it yet: %s", r.Headline())
}

// OpenThread is the button that leads to where something was asked.
func (v Voice) OpenThread() string { return v.s.word("Open the thread") }
