package reader

import (
	"regexp"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/talk"
)

// tellsJob reads a message that tells what holds for a job; false where it
// tells none.
func (r *Reader) tellsJob(rd *reading.Reading, text string, in *scan.Tongue, language string) (parser.Question, error, bool) {
	words := r.lex.Job
	if q, ok := talk.Forgets(words.Forget, rd); ok {
		return q, nil, true
	}
	switch {
	case strings.Contains(text, ":") && words.Opening.MatchString(text):
		q, err := r.readJob(text, in, language, words.Opening)
		return q, err, true
	case strings.Contains(text, ":") && words.Next.MatchString(text):
		q, err := r.readJob(text, in, language, words.Next)
		return q, err, talk.OfJobsTree(q)
	case words.Note.MatchString(text):
		q, err := r.readJob(text, in, language, words.Note)
		return q, err, err == nil && !q.Empty() || talk.OfJobsTree(q) || len(q.Quantities) > 0
	case words.Named.MatchString(text) && !strings.ContainsAny(text, "?¿"):
		q, err := r.readJob(text, in, language, words.Named) // the name itself is cut out before
		return q, err, err == nil && q.Arborist != nil && talk.Jobs(q)
	case words.Start.MatchString(text):
		q, err := r.readJob(text, in, language, words.Start)
		ask, _ := err.(*parser.Ask)
		strength := ask != nil && (ask.Kind == parser.WhichStrength || ask.Kind == parser.NoUnit || ask.Kind == parser.WhichTon) && len(ask.Fields) > 0 && !slices.ContainsFunc(ask.Fields, func(f parser.Field) bool { return !slices.Contains(talk.OfJob, f) })
		return q, err, talk.OfJobsTree(q) || strength && q.Empty()
	}
	return parser.Question{}, nil, false
}

// pauseOf is a pause as long as a label: what stands before it is no part of what follows.
func pauseOf(label string) string { return "," + strings.Repeat(" ", len(label)-1) }

// readJob reads a message that tells what holds for a job, behind the words
// that say so.
func (r *Reader) readJob(text string, in *scan.Tongue, language string, label *regexp.Regexp) (parser.Question, error) {
	rest, arborist, site := talk.Names(r.lex.Job, text)
	rest = talk.CutAtWord(r.lex, arborist, text, rest)
	if at := label.FindStringIndex(rest); at != nil {
		rest = rest[:at[0]] + pauseOf(rest[at[0]:at[1]]) + rest[at[1]:]
	}
	again := func(text string) (*reading.Reading, parser.Question, error) {
		return r.anew(text, in, language, parser.Question{})
	}
	rd, q, err := again(rest)
	q, err = r.withoutTalk(rd, q, err, true, again)
	if a := gear.GoodForInJob(rd, &q); a != nil && err == nil {
		err = a
	}
	which, _ := err.(*parser.Ask)
	if q.Site = site; (talk.OfJobsTree(q) || q.Species != nil) && (which == nil || which.Kind != parser.WhichLimit) {
		talk.LeftOfJob(rd, &q)
		talk.GearLeft(rd, &q)
	}
	q.Intent, q.Arborist, q.Site = parser.AskJob, arborist, site
	if r.lex.Job.Next.MatchString(text) {
		q.Drops = []parser.Field{parser.SpeciesField, parser.HitchHeight} // they were the last one's
	}
	if ask, ok := err.(*parser.Ask); ok && ask.Kind == parser.Nonsense && (arborist != nil || site != nil) {
		err = nil
	}
	return q, err
}
