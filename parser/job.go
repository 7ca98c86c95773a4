package parser

import (
	"regexp"
	"slices"
	"strings"
)

// jobWords are the labels of a message that tells what holds for a job:
// "job: limit 600 lb, arborist @dana, site Birch Lane". The label before the
// colon makes it one; behind the others stands a name, up to the next comma.
// Without a colon the label may begin the message, where nothing but a job's
// facts follow; what is to be noted down is always the job's.
type jobWords struct{ opening, start, note, arborist, site *regexp.Regexp }

// Labels of the word file.
const (
	labelJob      = "job"
	labelNote     = "note"
	labelArborist = "arborist"
	labelSite     = "site"
)

// begins is where a message does, but for a greeting: "ok so, ".
const begins = `(?i)^(?:[\pL' ]{1,20},)?[^\pL\pN]*`

func newJobWords(labels map[string][]string) jobWords {
	any := func(label string) string {
		words := slices.Clone(labels[label])
		for i, w := range words {
			words[i] = strings.ReplaceAll(regexp.QuoteMeta(w), " ", `\s+`)
		}
		return "(?:" + strings.Join(words, "|") + ")"
	}
	named := func(label, name string) *regexp.Regexp {
		return regexp.MustCompile(`(?i)(?:^|[,;:.\n]|\s)\s*(?:the\s+|our\s+|el\s+|la\s+)?` + any(label) + `(?:\s*[:=]\s*|\s+(?:is\s+|es\s+)?)(` + name + `)`)
	}
	return jobWords{
		opening:  regexp.MustCompile(`(?i)(?:^|[^\pL\pN])` + any(labelJob) + `\s*:`),
		start:    regexp.MustCompile(begins + any(labelJob) + `\s+`),
		note:     regexp.MustCompile(begins + any(labelNote) + `(?:\s*[:,]\s*|\s+)`),
		arborist: named(labelArborist, `@?\pL[\pL\pN._'’ -]{0,39}`),
		site:     named(labelSite, `[\pL\pN][\pL\pN .'’&/#-]{0,59}`),
	}
}

// names takes the names out of a job's message: what is left is read as any
// other, every byte in its place.
func (j jobWords) names(text string) (rest string, arborist, site *Said[string]) {
	arborist, text = cutName(j.arborist, text, text)
	site, rest = cutName(j.site, text, text)
	return rest, arborist, site
}

// nextLabel is what a name ends at: "arborist Dana and site Birch Lane".
var nextLabel = regexp.MustCompile(`(?i) (?:and|y) `)

// cutName finds a label with its name, and blanks both.
func cutName(label *regexp.Regexp, text, blanked string) (*Said[string], string) {
	m := label.FindStringSubmatchIndex(text)
	if m == nil {
		return nil, blanked
	}
	words := text[m[2]:m[3]]
	if and := nextLabel.FindStringIndex(words); and != nil {
		words = words[:and[0]]
	}
	words = strings.TrimRight(words, " .-")
	end := m[2] + len(words)
	name := Said[string]{Value: strings.Join(strings.Fields(strings.TrimPrefix(words, "@")), " "), Words: words, Start: m[2], End: end}
	return &name, blanked[:m[0]] + "," + strings.Repeat(" ", end-m[0]-1) + blanked[end:]
}

// cutAtWord ends a person's name before the first word that means something to
// a crew: "arborist dana limit 600 lb".
func (lx *lexicon) cutAtWord(name *Said[string], text, rest string) string {
	if name == nil {
		return rest
	}
	at := 0
	for i, w := range strings.Fields(name.Words) {
		at += strings.Index(name.Words[at:], w)
		if i > 0 && lx.root.after(fold(w)) != nil {
			end := name.Start + len(strings.TrimRight(name.Words[:at], " "))
			rest = rest[:end] + text[end:name.End] + rest[name.End:]
			*name = Said[string]{Value: strings.TrimPrefix(text[name.Start:end], "@"), Words: text[name.Start:end], Start: name.Start, End: end}
			return rest
		}
		at += len(w)
	}
	return rest
}

// ofJob are the facts that can hold for a whole job.
var ofJob = []Field{
	Limit, RopeLength, RopeDiameter, WinchPull, People, Efficiency, PersonPull, DesignFactor, Strands,
	RopeBreak, RopeWorking, BlockBreak, BlockWorking, SlingBreak, SlingWorking, ConnectorBreak, ConnectorWorking, DrumBreak, DrumWorking,
}

// jobs says whether a question tells what can hold for a job, and nothing else.
func (q Question) jobs() bool {
	alien := slices.ContainsFunc(q.Quantities, func(x Quantity) bool { return !slices.Contains(ofJob, x.Field) })
	return !alien && q.Species == nil && q.Shape == nil && q.Condition == nil &&
		(len(q.Quantities) > 0 || q.SaysUnits || q.Arborist != nil || q.Site != nil)
}

// tellsJob reads a message that tells what holds for a job; false where it
// tells none.
func (r *Reader) tellsJob(text string, in *tongue, language string) (Question, error, bool) {
	words := r.lex.job
	switch {
	case strings.Contains(text, ":") && words.opening.MatchString(text):
		q, err := r.readJob(text, in, language, words.opening)
		return q, err, true
	case words.note.MatchString(text):
		q, err := r.readJob(text, in, language, words.note)
		return q, err, err == nil && !q.Empty() || q.jobs() || len(q.Quantities) > 0
	case words.start.MatchString(text):
		q, err := r.readJob(text, in, language, words.start)
		ask, _ := err.(*Ask)
		strength := ask != nil && (ask.Kind == WhichStrength || ask.Kind == NoUnit || ask.Kind == WhichTon) && len(ask.Fields) > 0 && !slices.ContainsFunc(ask.Fields, func(f Field) bool { return !slices.Contains(ofJob, f) })
		return q, err, q.jobs() || strength && q.Empty()
	}
	return Question{}, nil, false
}

// readJob reads a message that tells what holds for a job, behind the words
// that say so.
func (r *Reader) readJob(text string, in *tongue, language string, label *regexp.Regexp) (Question, error) {
	rest, arborist, site := r.lex.job.names(text)
	rest = r.lex.cutAtWord(arborist, text, rest)
	if at := label.FindStringIndex(rest); at != nil {
		rest = rest[:at[0]] + strings.Repeat(" ", at[1]-at[0]) + rest[at[1]:]
	}
	again := func(text string) (*reading, Question, error) { return r.anew(text, in, language, Question{}) }
	rd, q, err := again(rest)
	q, err = r.withoutTalk(rd, q, err, true, again)
	q.Intent, q.Arborist, q.Site = AskJob, arborist, site
	if ask, ok := err.(*Ask); ok && ask.Kind == Nonsense && (arborist != nil || site != nil) {
		err = nil
	}
	return q, err
}
