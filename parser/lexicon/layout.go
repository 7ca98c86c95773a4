package lexicon

import (
	"fmt"
	"regexp"
	"strings"
)

// NumberHere stands in a pattern for the number that it is about.
const NumberHere = "\x00"

// Layout are the patterns of the word files for what stands right behind a
// number, or right before it, each of all languages.
type Layout struct {
	OffTheTree, OffAtAll, OffElsewhere, ToTheDrum, OfDrum, IsAcross         *regexp.Regexp
	DrumIs, DrumWide, DrumOf, OfTrunk, TrunkIs                              *regexp.Regexp
	OwnRope, OrRope, EitherRope, DrumStands, CutBefore, CutBehind, CutWhole *regexp.Regexp
	DoesRope                                                                *regexp.Regexp
}

// newLayout compiles the patterns. One that is malformed, or missing in every
// language, is an error.
func newLayout(patterns map[string][]string) (Layout, error) {
	var l Layout
	things := strings.NewReplacer(
		"{drum}", `(?:`+strings.Join(patterns["drum"], "|")+`)\b`, "{trunk}", `(?:`+strings.Join(patterns["trunk"], "|")+`)\b`,
		"{number}", NumberHere)
	spaces := strings.NewReplacer(" *", `\s*`, " +", `\s+`, " ", `\s+`)
	for name, to := range map[string]**regexp.Regexp{
		"off-the-tree": &l.OffTheTree, "off-at-all": &l.OffAtAll, "off-elsewhere": &l.OffElsewhere, "to-the-drum": &l.ToTheDrum,
		"of-drum": &l.OfDrum, "is-across": &l.IsAcross, "drum-is": &l.DrumIs, "drum-wide": &l.DrumWide, "drum-of": &l.DrumOf,
		"of-trunk": &l.OfTrunk, "trunk-is": &l.TrunkIs, "own-rope": &l.OwnRope, "or-rope": &l.OrRope, "either-rope": &l.EitherRope,
		"cut-before": &l.CutBefore, "cut-behind": &l.CutBehind, "cut-whole": &l.CutWhole, "drum-stands": &l.DrumStands, "does-rope": &l.DoesRope,
	} {
		if len(patterns[name]) == 0 {
			return l, fmt.Errorf("no language has the pattern %s", name)
		}
		re, err := regexp.Compile("(?i)(?:" + spaces.Replace(things.Replace(strings.Join(patterns[name], "|"))) + ")")
		if err != nil {
			return l, fmt.Errorf("pattern %s: %w", name, err)
		}
		*to = re
	}
	return l, nil
}
