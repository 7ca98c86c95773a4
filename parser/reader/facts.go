package reader

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/reading"
	"heft/parser/talk"
)

// withoutTalk reads a message of the job once more without the clauses that are
// only talk, and notes what was left out. A clause that holds a number, or that
// could turn another's meaning, is none.
func (r *Reader) withoutTalk(rd *reading.Reading, q parser.Question, err error, labelled bool, again func(text string) (*reading.Reading, parser.Question, error)) (parser.Question, error) {
	first, firstErr := q, err
	if !labelled && (!talk.MaybeFacts(rd) || talk.Queries(rd)) {
		return q, err
	}
	var left []parser.Said[string]
	var doubt error // what is asked about first of what a job's line leaves in doubt
	for text := rd.Text; len(left) <= talk.MostLeft; {
		from, to := talk.Talk(rd, err)
		if from >= to && labelled {
			if from, to = talk.Doubted(rd, err); from < to && doubt == nil && talk.TellsGear(rd, from, to) {
				doubt = err
			}
		}
		if from >= to {
			break
		}
		said := rd.Text[from:to]
		left = append(left, parser.Said[string]{Value: said, Words: said, Start: from, End: to})
		text = text[:from] + "," + strings.Repeat(" ", to-from-1) + text[to:]
		rd, q, err = again(text)
	}
	if len(left) == 0 || !labelled && !q.Facts && !talk.OnlyKeeps(rd, q, err) {
		return first, firstErr
	}
	slices.SortFunc(left, func(a, b parser.Said[string]) int { return a.Start - b.Start })
	q.Left = left
	if talk.OnlyKeeps(rd, q, err) {
		q.Intent, err = parser.AskJob, nil
	}
	if err == nil {
		err = doubt
	}
	return q, err
}
