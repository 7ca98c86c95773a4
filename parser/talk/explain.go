package talk

import "heft/parser/reading"

// Explain says what is to be explained: of the question in the message, or of
// the last answer where the message holds no question of its own.
func Explain(rd *reading.Reading) string {
	want := ""
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Explain != "" {
			want = e.Term.Explain
		}
	}
	return want
}
