package reader

import (
	"regexp"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/talk"
)

// tellsJob reads a message that tells what holds for a job; false where it
// tells none.
func (r *Reader) tellsJob(text string, in *scan.Tongue, language string) (parser.Question, error, bool) {
	words := r.lex.Job
	switch {
	case strings.Contains(text, ":") && words.Opening.MatchString(text):
		q, err := r.readJob(text, in, language, words.Opening)
		return q, err, true
	case words.Note.MatchString(text):
		q, err := r.readJob(text, in, language, words.Note)
		return q, err, err == nil && !q.Empty() || talk.Jobs(q) || len(q.Quantities) > 0
	case words.Start.MatchString(text):
		q, err := r.readJob(text, in, language, words.Start)
		ask, _ := err.(*parser.Ask)
		strength := ask != nil && (ask.Kind == parser.WhichStrength || ask.Kind == parser.NoUnit || ask.Kind == parser.WhichTon) && len(ask.Fields) > 0 && !slices.ContainsFunc(ask.Fields, func(f parser.Field) bool { return !slices.Contains(talk.OfJob, f) })
		return q, err, talk.Jobs(q) || strength && q.Empty()
	}
	return parser.Question{}, nil, false
}

// readJob reads a message that tells what holds for a job, behind the words
// that say so.
func (r *Reader) readJob(text string, in *scan.Tongue, language string, label *regexp.Regexp) (parser.Question, error) {
	rest, arborist, site := talk.Names(r.lex.Job, text)
	rest = talk.CutAtWord(r.lex, arborist, text, rest)
	if at := label.FindStringIndex(rest); at != nil {
		rest = rest[:at[0]] + strings.Repeat(" ", at[1]-at[0]) + rest[at[1]:]
	}
	again := func(text string) (*reading.Reading, parser.Question, error) {
		return r.anew(text, in, language, parser.Question{})
	}
	rd, q, err := again(rest)
	q, err = r.withoutTalk(rd, q, err, true, again)
	q.Intent, q.Arborist, q.Site = parser.AskJob, arborist, site
	if ask, ok := err.(*parser.Ask); ok && ask.Kind == parser.Nonsense && (arborist != nil || site != nil) {
		err = nil
	}
	return q, err
}
