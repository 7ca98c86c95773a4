package parser

// What a crew can want explained of the last answer.
const (
	ExplainNumbers = "numbers" // how it was worked out
	ExplainAssumed = "assumed" // what was taken for granted
)

// explain says what is to be explained, where the message asks for that and
// holds no number of its own: "why?", "what did you assume?". In "why is a 14
// in limb so heavy" the question is the limb.
func (rd *reading) explain() string {
	want := ""
	for _, e := range rd.elems {
		switch {
		case e.fig != nil || e.term != nil && (e.term.tree != nil || e.term.shape != ""):
			return ""
		case e.term != nil && e.term.explain != "":
			want = e.term.explain
		}
	}
	return want
}
