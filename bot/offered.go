package bot

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"heft/parser"
)

// What is offered for a number that is asked about: only what its size, its unit and
// the words beside it leave possible.

// hint shows how to type a number so that it can only be one thing.
var hint = map[parser.Field]string{
	parser.Diameter: "“%s across”", parser.ButtDiameter: "“%s butt”", parser.TipDiameter: "“%s tip”",
	parser.MidDiameter: "“%s in the middle”", parser.Length: "“%s long”", parser.HitchHeight: "“hitched at %s”",
	parser.BlockHeight: "“block %s above the cut”", parser.Tie: "“tied %s from the cut”",
	parser.WinchPull: "“winch of %s”", parser.PersonPull: "“each pulls %s”", parser.ObstacleOut: "“%s past the block”", parser.ObstacleHeight: "“%s high”",
	parser.DesignFactor: "“design factor %s”", parser.Parts: "“%s tackle”", parser.Limit: "“limit %s”", parser.Weight: "“weighs %s”", parser.RopeLength: "“%s of rope”",
	parser.LineOut: "“%s of line out”", parser.Sideways: "“%s to the side”", parser.DropHeight: "“drop %s”", parser.RunLength: "“let it run %s”", parser.Rise: "“%s of rise”", parser.CutHeight: "“cut at %s”", parser.Apart: "“blocks %s apart”", parser.BlockBelow: "“block %s below the cut”",
}

// whatIs asks what a number is, and offers only what its size and its unit leave.
func (s speaker) whatIs(ask *parser.Ask, fields []parser.Field) string {
	words := quote(ask.Words)
	if hints := s.hints(ask, fields); hints != "" {
		return s.say("What is %s? Type it with a word, like %s, or leave it out.", words, hints)
	}
	return s.say("What is %s? Say what it is, or leave it out.", words)
}

// hints are some ways to type a number in question, with a word for each of the fields
// that it can be.
func (s speaker) hints(ask *parser.Ask, fields []parser.Field) string {
	words := ask.Words
	bare := trimQuote(words)
	heavy := ask.Mass || weighty.MatchString(words)
	switch {
	case heavy && (slices.Contains(fields, parser.WinchPull) || slices.Contains(fields, parser.PersonPull)):
	case heavy:
		fields = []parser.Field{parser.Weight, parser.Limit}
	case strings.Contains(words, ":"):
		fields = []parser.Field{parser.Parts}
	}
	var out []string
	for _, f := range fields {
		if h := hint[f]; h != "" && len(out) < 3 && heavy == isHeavy(f) && possible(f, ask) {
			if line := s.say(h, bare); !slices.Contains(out, line) {
				out = append(out, line)
			}
		}
	}
	return s.or(out)
}

// The most and the least, in metres, that a length can be of some fields, and the most
// that a bare number can be, in whatever unit.
const (
	widest, longestPiece, lowestHitch, highestHitch = 1.6, 60, 1.2, 90
	widestBare, longestBare, highestBare            = 100, 200, 300
)

// possible says whether a number in question can be of a field, by its size.
func possible(f parser.Field, ask *parser.Ask) bool {
	if ask.Metres > 0 {
		switch {
		case slices.Contains(acrossFields, f):
			return ask.Metres <= widest
		case f == parser.Length:
			return ask.Metres <= longestPiece
		case f == parser.HitchHeight:
			return ask.Metres >= lowestHitch && ask.Metres <= highestHitch
		}
	}
	if ask.Number > 0 {
		switch {
		case slices.Contains(acrossFields, f):
			return ask.Number <= widestBare
		case f == parser.Length:
			return ask.Number <= longestBare
		case f == parser.HitchHeight:
			return ask.Number <= highestBare
		}
	}
	return true
}

// weighty is a number that can be no size.
var weighty = regexp.MustCompile(`(?i)\d\s*(lbs?|pounds?|libras?|kgs?|kilos?|kilogramos?|tonnes?|toneladas?|t|k?n)$`)

// unitHint shows the number with the units it could have.
func (a *answer) unitHint(ask *parser.Ask) string {
	v, words, bare := a.voice, quote(ask.Words), inFigures(ask)
	switch {
	case slices.Contains(ask.Fields, parser.PersonPull):
		return v.say("%s each: is it what each pulls? Then type “each pulls %s lb”, or kg. What somebody weighs has no part in it.", bare, bare)
	case gearAsk(ask) && len(ask.Fields) == 1:
		return v.say("%s has no unit. Type “%s”.", words, v.strengthOf(ask.Fields[0], bare+v.heavyUnit(bare)))
	case gearAsk(ask) && a.stamped(bare) != nil:
		return v.say("%s has no unit. Type “%s”, or “%s”.", words, v.strengthOf(ask.Fields[0], bare+" kN"), v.strengthOf(ask.Fields[len(ask.Fields)-1], bare+" t"))
	case gearAsk(ask):
		return v.say("%s has no unit. Type “%s”, or “%s”.", words, v.strengthOf(ask.Fields[0], bare+v.heavyUnit(bare)),
			v.strengthOf(ask.Fields[len(ask.Fields)-1], bare+v.heavyUnit(bare)))
	case slices.ContainsFunc(ask.Fields, isAngle) && len(ask.Fields) > 1:
		return v.say("%s has no unit. Type “%s°” or “%s ft”, or m.", words, bare, bare)
	case slices.ContainsFunc(ask.Fields, isAngle):
		return v.say("%s has no unit. Type “%s°”.", words, bare)
	case slices.Contains(ask.Fields, parser.Wraps):
		return v.say("%s: wraps or people? Type “%s wraps” or “%s on the rope”.", words, bare, bare)
	case a.load(bare):
		return v.say("%s has no unit. Type “%s lb” or “%s kg”.", words, bare, bare)
	case light(ask):
		return v.say("%s is no weight by itself. Type it like “%s” or “%s”.", words, hundreds(ask), bare+" t")
	case inMillimetres(ask):
		return v.say("%s has no unit. Type “%s”.", words, bare+" mm")
	case fraction(bare):
		return v.say("%s has no unit. Type “%s”.", words, bare+" in")
	case onlyAcross(ask):
		return v.say("%s has no unit. Type “%s in” or “%s cm”.", words, bare, bare)
	case belowCut(ask) && ask.Number >= leastMillimetre:
		return v.say("%s has no unit. Type “%s mm” or “%s cm”.", words, bare, bare)
	case belowCut(ask) && ask.Number >= leastInches:
		return v.say("%s has no unit. Type “%s in” or “%s cm”.", words, bare, bare)
	case onlyLong(ask):
		return v.say("%s has no unit. Type “%s ft” or “%s m”.", words, bare, bare)
	}
	if slices.Contains(ask.Fields, parser.HitchHeight) {
		return v.say("%s has no unit. Type “hitched at %s ft”, “%s wraps” or “%s on the rope”. One piece a message.", words, bare, bare, bare)
	}
	if a.wideOrHeavy(ask) {
		return v.say("%s has no unit. Type “%s mm across” or “%s kg”.", words, bare, bare)
	}
	if slices.ContainsFunc(ask.Fields, isHeavy) || !v.metric && tooLong(bare) {
		return v.say("%s has no unit. Type “%s lb” or “%s kg”.", words, bare, bare)
	}
	if v.metric {
		return v.say("%s has no unit. Type “%s cm” or “%s m”, in or ft.", words, bare, bare)
	}
	return v.say("%s has no unit. Type “%s in” or “%s ft”, cm or m.", words, bare, bare)
}

// The sizes of a bare number that leave one reading alone.
const (
	lightest        = 25  // a weight that is less is told in hundreds or in tonnes
	leastMillimetre = 150 // a thickness that is more is in millimetres
	leastInches     = 10  // so many feet or metres below the cut no block is put; common practice, no source
)

// light says whether a bare number is a weight or a limit that nobody would ask about in
// pounds or kilograms: "weighs about 4".
func light(ask *parser.Ask) bool {
	f := ask.Fields
	return len(f) == 1 && (f[0] == parser.Weight || f[0] == parser.Limit) && ask.Number > 0 && ask.Number < lightest
}

// hundreds is such a number in hundreds of pounds.
func hundreds(ask *parser.Ask) string { return trimmed(ask.Number*100, 0) + " lb" }

// inMillimetres says whether a bare number is a thickness that is too much for inches and
// centimetres.
func inMillimetres(ask *parser.Ask) bool {
	return onlyAcross(ask) && ask.Number >= leastMillimetre
}

// belowCut says whether a bare number can only be how far a block is below the cut, or how
// far something is from it.
func belowCut(ask *parser.Ask) bool {
	return onlyLong(ask) && ask.Choices[0].Field == parser.BlockBelow || ask.Away
}

// wideOrHeavy says whether a bare number beside metres is a thickness in millimetres, or
// a weight: no piece is so many centimetres across, or metres long.
func (a *answer) wideOrHeavy(ask *parser.Ask) bool {
	return a.voice.metric && ask.Number >= leastMillimetre && slices.ContainsFunc(ask.Fields, func(f parser.Field) bool { return slices.Contains(acrossFields, f) })
}

// fraction says whether a bare number is told as only inches are: "9/16".
func fraction(bare string) bool {
	over, under, ok := strings.Cut(bare, "/")
	a, err := strconv.Atoi(over)
	b, wrong := strconv.Atoi(under)
	return ok && err == nil && wrong == nil && a < 2*b
}
