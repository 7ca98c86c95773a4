package lexicon

import (
	"regexp"
	"slices"
	"strings"
)

// JobWords are the labels of a message that tells what holds for a job:
// "job: limit 600 lb, arborist @dana, site Birch Lane". The label before the
// colon makes it one; behind the others stands a name, up to the next comma.
// Without a colon the label may begin the message, where nothing but a job's
// facts follow; what is to be noted down is always the job's.
type JobWords struct{ Opening, Start, Note, Arborist, Site *regexp.Regexp }

// Labels of the word file.
const (
	labelJob      = "job"
	labelNote     = "note"
	labelArborist = "arborist"
	labelSite     = "site"
)

// begins is where a message does, but for a greeting: "ok so, ".
const begins = `(?i)^(?:[\pL' ]{1,20},)?[^\pL\pN]*`

func newJobWords(labels map[string][]string) JobWords {
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
	return JobWords{
		Opening:  regexp.MustCompile(`(?i)(?:^|[^\pL\pN])` + any(labelJob) + `\s*:`),
		Start:    regexp.MustCompile(begins + any(labelJob) + `\s+`),
		Note:     regexp.MustCompile(begins + any(labelNote) + `(?:\s*[:,]\s*|\s+)`),
		Arborist: named(labelArborist, `@?\pL[\pL\pN._'’ -]{0,39}`),
		Site:     named(labelSite, `[\pL\pN][\pL\pN .'’&/#-]{0,59}`),
	}
}
