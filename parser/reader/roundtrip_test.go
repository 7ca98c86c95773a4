package reader_test

import "testing"

// TestUnderstoodQuestionsAreReadFromTheirOwnWords writes every understood
// question of the corpora as words, and wants them read as the same question.
func TestUnderstoodQuestionsAreReadFromTheirOwnWords(t *testing.T) {
	r := newReader(t)
	n := 0
	for _, p := range readCorpora(t) {
		q, err := r.Read(p.text)
		if err != nil || q.Hello || q.Intent == "job" || q.InRow { // several messages are written one by one
			continue
		}
		n++
		words := q.Words()
		again, err := r.Read(words)
		if err != nil {
			t.Errorf("%s: %q is written as %q: %v", p.at, p.text, words, err)
			continue
		}
		want, got := meant(q), meant(again)
		delete(want.facts, "fix")
		delete(want.facts, "followup")
		delete(want.facts, "passed")
		delete(want.facts, "left")  // nor has what is not kept of a job's line
		delete(want.facts, "topic") // what is asked of no piece has no words of its own
		delete(got.facts, "topic")
		if got.String() != want.String() {
			t.Errorf("%s: %q is written as %q\n  got  %s\n  want %s", p.at, p.text, words, got, want)
		}
	}
	if n < 500 {
		t.Errorf("only %d questions were written", n)
	}
}
