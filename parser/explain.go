package parser

// What a crew can want explained of the last answer.
const (
	ExplainNumbers = "numbers" // how it was worked out
	ExplainAssumed = "assumed" // what was taken for granted
)

// explain says what is to be explained: of the question in the message, or of
// the last answer where the message holds no question of its own.
func (rd *reading) explain() string {
	want := ""
	for _, e := range rd.elems {
		if e.term != nil && e.term.explain != "" {
			want = e.term.explain
		}
	}
	return want
}
