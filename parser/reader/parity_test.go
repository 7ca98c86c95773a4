package reader_test

import (
	"slices"
	"strings"
	"testing"

	"heft/parser/language"
)

// unsaid are the meanings of the English file that another language has no
// words for, each with its reason. What a tag lacks that stands here must lack
// it in fact.
var unsaid = map[string]map[string]string{
	"es": {
		"ask log!":                    "“bitácora” is nothing else",
		"negative":                    "“negativo” asks for the drop by itself",
		"kind may-hurt":               "no word for a rope that took harm stops whoever it was",
		"kind hurter":                 "see “kind may-hurt”",
		"danger felling:upright":      "“enderezar” rights a tree, and says no side of it",
		"danger none felling:upright": "see “danger felling:upright”",
		"kind right-where":            "see “danger felling:upright”",
		"kind rights-it":              "see “danger felling:upright”",
		"kind to-there":               "see “danger felling:upright”",
		"unit stone":                  "no crew that speaks it weighs in stones",
		"cue determines":              "behind “no”, “la” may be whom a verb is of: “no la dejo”",
		"cue exactly":                 "“justo arriba” is no dead wood",
		"cue sounds-two":              "“dos” sounds like nothing else",
		"cue below":                   "a load that “cuelga” needs no word behind its length",
		"cue from":                    "“de” and “desde” stand in the roles",
		"cue itself":                  "“peso” and “pesa” stand in the roles",
		"cue moved":                   "“pa allá” is a role by itself",
		"cue offset":                  "how far a block is off is told by “corrida”",
		"cue over":                    "“de lado” is a role by itself",
		"cue tree":                    "how tall a tree is is told by “de alto”",
		"cue under":                   "a piece “cuelga de” its rope",
		"cue weighing":                "see “itself”",
		"the-other":                   "“otro” is asked about: it may be another tree",
		"hoists":                      "“levantar” lifts, what stands a limb up is “parar”",
		"attribute":                   "no verb names a limb: “la rama de abajo”",
		"join to":                     "“a” says much else besides: it is a “to?”",
		"number x100":                 "doscientos, trescientos … are words of their own",
		"number 0":                    "“doscientos cinco” has no nought",
		"tons 1":                      "“una tonelada” is a number and its unit",
		"tons 1/2":                    "“media tonelada” is a number and its unit",
		"tons 3/2":                    "“una tonelada y media” is a number and its unit",
		"tall":                        "“de alto” stands behind its number: it is a “high”",

		"kind kit-cheek":   "“grieta en el cachete” is told with “tiene”, the part behind it",
		"kind only-a":      "“nada más”, “chiquita” stand behind the crack, and are passed over",
		"kind part-goes":   "“donde pasa el perno” is told by the part alone",
		"kind there-it-is": "see “kit-cheek”",

		"kind not-him":   "“encima de la barda del compañero” names first what it lies on",
		"cue idle-it":    "see “reckons”: what a denial may turn is named, not what it may not",
		"cue idle-lead":  "see “reckons”",
		"cue idle-thing": "see “reckons”",
		"cue idle-verb":  "see “reckons”",
		"cue lacking":    "see “reckons”",
		"cue on-it":      "“en ella” tells who rides, and never who holds",
		"cue us":         "see “reckons”",
		"cue who":        "see “reckons”",
	},
}

// TestEveryMeaningHasWordsInEveryLanguage: what an English crew can say, every
// other crew can say.
func TestEveryMeaningHasWordsInEveryLanguage(t *testing.T) {
	all, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	english := meanings(all, "en")
	if len(english) < 150 {
		t.Fatalf("only %d meanings in English", len(english))
	}
	for _, l := range all {
		if l.Tag == "en" {
			continue
		}
		own := map[string]bool{}
		for _, m := range meanings(all, l.Tag) {
			for _, covered := range covers(m) {
				own[covered] = true
			}
		}
		for _, m := range english {
			reason, excused := unsaid[l.Tag][m]
			switch said := own[covers(m)[0]]; {
			case !said && !excused:
				t.Errorf("%s.txt has no words for %q", l.Tag, m)
			case said && excused:
				t.Errorf("%s.txt has words for %q, which is excused: %s", l.Tag, m, reason)
			}
		}
		for m, reason := range unsaid[l.Tag] {
			if reason == "" || !slices.Contains(english, m) {
				t.Errorf("%q is excused in %s without a reason, or is no meaning of en.txt", m, l.Tag)
			}
		}
	}
}

// meanings are what stands before the bars of a language's words; how words are
// chopped is each language's own.
func meanings(all []language.Language, tag string) []string {
	var out []string
	for _, l := range all {
		if l.Tag != tag {
			continue
		}
		for _, line := range l.Words {
			m, _, _ := strings.Cut(line.Text, "|")
			m = strings.Join(strings.Fields(m), " ")
			if own := strings.HasPrefix(m, "alias ") || strings.HasPrefix(m, "sound"); !own && !slices.Contains(out, m) {
				out = append(out, m)
			}
		}
	}
	return out
}

// covers are the meanings that the words of one stand for, itself first: a
// role on either side stands for both sides. That words give way, "?", is the
// affair of each language.
func covers(meaning string) []string {
	if strings.HasPrefix(meaning, "join ") {
		return []string{meaning}
	}
	m := strings.TrimSuffix(meaning, "?")
	if role, ok := strings.CutSuffix(m, " either"); ok {
		return []string{m, role + " after", role + " before"}
	}
	return []string{m}
}
