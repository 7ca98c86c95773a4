package bot

import "heft/parser"

// Speaking returns the desk with every question taken for one in a language.
func (d *Desk) Speaking(language string) *Desk { return &Desk{reader: speaking{d.reader, language}} }

type speaking struct {
	reader
	language string
}

func (s speaking) Read(text string) (parser.Question, error) {
	q, err := s.reader.Read(text)
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
