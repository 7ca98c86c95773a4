package bot

import (
	"errors"
	"slices"
	"strings"

	"heft/parser"
)

// Speaking returns the desk with every question taken for one in a language.
func (d *Desk) Speaking(language string) *Desk { return &Desk{reader: speaking{d.reader, language}} }

type speaking struct {
	crewReader
	language string
}

func (s speaking) Read(text string) (parser.Question, error) {
	q, err := s.crewReader.Read(text)
	q.Language = s.language
	return q, err
}

func (s speaking) ReadAfter(text string, before parser.Question) (parser.Question, error) {
	q, err := s.crewReader.ReadAfter(text, before)
	q.Language = s.language
	return q, err
}

// Labels are all the words of a scene.
func (s *Scene) Labels() []string {
	all := append([]string{s.Title, s.Plan, s.Verdict, s.Bar.Label, s.Reminder()}, s.Notes...)
	for _, m := range s.Marks {
		all = append(all, m.Label)
	}
	return all
}

// Reads says what is in doubt about a message by itself; nil where nothing is.
func (d *Desk) Reads(text string) *parser.Ask {
	_, err := d.reader.Read(text)
	ask, _ := errors.AsType[*parser.Ask](err)
	return ask
}

// Typed are the ways to type what is missing, in one language.
func Typed(language string) []string {
	s := speaker{language: language}
	var all []string
	for f := range noun {
		all = append(all, s.typed([]parser.Field{f}), speaker{metric: true, language: language}.typed([]parser.Field{f}))
	}
	for f, h := range hint {
		number := "14 in"
		if f == parser.Limit || f == parser.Weight {
			number = "600 lb"
		}
		all = append(all, strings.Trim(s.say(h, number), "“”"))
	}
	return slices.DeleteFunc(all, func(s string) bool { return s == "" })
}
