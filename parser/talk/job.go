package talk

import (
	"regexp"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// Names takes the names out of a job's message: what is left is read as any
// other, every byte in its place.
func Names(j lexicon.JobWords, text string) (rest string, arborist, site *parser.Said[string]) {
	arborist, text = cutName(j.Arborist, text, text)
	site, rest = cutName(j.Site, text, text)
	return rest, arborist, site
}

// nextLabel is what a name ends at: "arborist Dana and site Birch Lane".
var nextLabel = regexp.MustCompile(`(?i) (?:and|y) `)

// sentenceEnd is a full stop behind a word that is none shortened: "12 Birch Lane. red oak",
// not "St. Mary's".
var sentenceEnd = regexp.MustCompile(`\pL{4}\. `)

// placeAhead is what says before a label which place it is: what stands behind "at the
// miller place:" is no name of it.
var placeAhead = regexp.MustCompile(`(?i)(?:^|[^\pL])(?:at|en)(?:\s+[\pL'’]+){1,4}$`)

// cutName finds a label with its name, and blanks both.
func cutName(label *regexp.Regexp, text, blanked string) (*parser.Said[string], string) {
	m := label.FindStringSubmatchIndex(text)
	if m == nil || strings.Contains(text[m[0]:m[2]], ":") && placeAhead.MatchString(text[:m[0]]) {
		return nil, blanked
	}
	words := text[m[2]:m[3]]
	if and := nextLabel.FindStringIndex(words); and != nil {
		words = words[:and[0]]
	}
	if end := sentenceEnd.FindStringIndex(words); end != nil {
		words = words[:end[1]]
	}
	words = strings.TrimRight(words, " .-")
	end := m[2] + len(words)
	name := parser.Said[string]{Value: strings.Join(strings.Fields(strings.TrimPrefix(words, "@")), " "), Words: words, Start: m[2], End: end}
	return &name, blanked[:m[0]] + "," + strings.Repeat(" ", end-m[0]-1) + blanked[end:]
}

// CutAtWord ends a person's name before the first word that means something to
// a crew: "arborist dana limit 600 lb".
func CutAtWord(lx *lexicon.Lexicon, name *parser.Said[string], text, rest string) string {
	if name == nil {
		return rest
	}
	at := 0
	for i, w := range strings.Fields(name.Words) {
		at += strings.Index(name.Words[at:], w)
		titled := strings.HasSuffix(strings.TrimRight(name.Words[:at], " "), ".") // "Dr. Paula Reyes"
		if i > 0 && !titled && lx.Root.After(scan.Fold(w)) != nil {
			end := name.Start + len(strings.TrimRight(name.Words[:at], " "))
			rest = rest[:end] + text[end:name.End] + rest[name.End:]
			*name = parser.Said[string]{Value: strings.TrimPrefix(text[name.Start:end], "@"), Words: text[name.Start:end], Start: name.Start, End: end}
			return rest
		}
		at += len(w)
	}
	return rest
}

// OfJob are the facts that can hold for a whole job.
var OfJob = []parser.Field{
	parser.Limit, parser.RopeLength, parser.RopeDiameter, parser.DrumAcross, parser.WinchPull, parser.People, parser.Efficiency, parser.PersonPull, parser.DesignFactor, parser.Strands,
	parser.RopeBreak, parser.RopeWorking, parser.BlockBreak, parser.BlockWorking, parser.SlingBreak, parser.SlingWorking, parser.ConnectorBreak, parser.ConnectorWorking, parser.DrumBreak, parser.DrumWorking,
}

// Jobs says whether a question tells what can hold for a job, and nothing else.
func Jobs(q parser.Question) bool {
	alien := slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool { return !slices.Contains(OfJob, x.Field) })
	return !alien && q.Species == nil && q.Shape == nil && q.Condition == nil &&
		(len(q.Quantities) > 0 || q.SaysUnits || q.Arborist != nil || q.Site != nil)
}

// OfJobsTree says whether a question tells what can hold for a job, its tree and how high its
// block is among it: how long a tree is that is named so is the tree's, not a piece's.
func OfJobsTree(q parser.Question) bool {
	if Jobs(q) {
		return true
	}
	ofPiece := func(x parser.Quantity) bool {
		return !slices.Contains(OfJob, x.Field) && x.Field != parser.HitchHeight && x.Field != parser.SpeciesField && (x.Field != parser.Length || q.Species == nil)
	}
	piece := q.Shape != nil || q.Condition != nil || slices.ContainsFunc(q.Quantities, ofPiece)
	return !piece && (q.Has(OfJob...) || q.Has(parser.HitchHeight) || q.Arborist != nil || q.Site != nil)
}
