package bot

import (
	"testing"

	"heft/parser"
)

// TestEveryTopicIsAnswered: what the word files may tell has words of its own, unless it
// is answered elsewhere.
func TestEveryTopicIsAnswered(t *testing.T) {
	elsewhere := map[parser.Intent]string{
		parser.TopicAside: "it is refused", parser.TopicLog: "the day's log answers it", parser.TopicLogOpen: "the day's log answers it",
		parser.TopicWhy: "the last answer is explained", parser.TopicAssumed: "the last answer is explained",
	}
	for _, topic := range parser.TopicsTold {
		a := answer{question: parser.Question{Intent: parser.AskHelp, Topic: topic}}
		if a.inWords(); len(a.lines) == 0 {
			a.inFigures()
		}
		if (len(a.lines) > 0) == (elsewhere[topic] != "") {
			t.Errorf("%s: %q, elsewhere %q", topic, a.lines, elsewhere[topic])
		}
	}
}
