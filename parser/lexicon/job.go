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
// What is said of the next job begins one too, and what is to be forgotten of this one is told
// by itself: "clear the hitch".
type JobWords struct {
	Opening, Start, Next, Note, Arborist, Site, Named *regexp.Regexp
	Forget                                            ForgetWords
}

// Labels of the word file.
const (
	labelJob      = "job"
	labelForJob   = "for-job"
	labelNext     = "next-job"
	labelDrop     = "drop"
	labelTree     = "drop-tree"
	labelHitch    = "drop-hitch"
	labelLimit    = "drop-limit"
	labelNote     = "note"
	labelArborist = "arborist"
	labelSite     = "site"
)

// begins is where a message does, but for a greeting: "ok so, ".
const begins = `(?i)^(?:[\pL'’ ]{1,20},)?[^\pL\pN]*`

// unaccented takes an accent for left out as well, and an apostrophe however it is curled.
var unaccented = strings.NewReplacer("á", "[áa]", "é", "[ée]", "í", "[íi]", "ó", "[óo]", "ú", "[úu]", "ñ", "[ñn]", "'", "['’]")

func newJobWords(labels map[string][]string) JobWords {
	any := func(label string) string {
		words := slices.Clone(labels[label])
		for i, w := range words {
			words[i] = unaccented.Replace(strings.ReplaceAll(regexp.QuoteMeta(w), " ", `\s+`))
		}
		return "(?:" + strings.Join(words, "|") + ")"
	}
	named := func(label, name string) *regexp.Regexp {
		return regexp.MustCompile(`(?i)(?:^|[,;:.\n]|\s)\s*(?:the\s+|our\s+|el\s+|la\s+)?` + any(label) + `(?:\s*[:=]\s*|\s+(?:is\s+|es\s+)?)(` + name + `)`)
	}
	return JobWords{
		Next:     regexp.MustCompile(`(?i)(?:(?:^|[^\pL\pN])` + any(labelNext) + `\s*:|` + strings.TrimPrefix(begins, "(?i)") + any(labelNext) + `(?:[^\pL\pN]|$))`),
		Forget:   newForgetWords(any),
		Opening:  regexp.MustCompile(`(?i)(?:^|[^\pL\pN])(?:` + any(labelForJob) + `|` + any(labelJob) + `)\s*:`),
		Start:    regexp.MustCompile(begins + any(labelJob) + `\s+`),
		Note:     regexp.MustCompile(begins + any(labelNote) + `(?:\s*[:,]\s*|\s+)`),
		Named:    regexp.MustCompile(begins + `(?:the\s+|our\s+|el\s+|la\s+|today['’]?s\s+)?` + any(labelArborist) + `\s*(?:[:=]|\s(?:is|now|es)\s)?\s*(?:@|(?-i:\p{Lu}))`),
		Arborist: named(labelArborist, `@?\pL[\pL\pN._'’ -]{0,39}`),
		Site:     named(labelSite, `[\pL\pN][\pL\pN .'’&/#-]{0,59}`),
	}
}
