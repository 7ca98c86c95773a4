package parser

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"heft/calc/unit"
)

// Words writes a question as words that are read as that question again: what
// a button stands for, and what a log can be asked anew by. The words that
// were mended, and the places of all words, are not kept.
func (q Question) Words() string {
	if len(q.Pieces) > 0 {
		return q.listed()
	}
	parts := []string{explaining[q.Explain], asking[q.Intent], q.piece()}
	if q.Intent == AskBlockLoad && q.Has(Turn) {
		parts[1] = "" // the turn asks, and names its own block
	}
	notes := make([]string, 0, len(q.Notes))
	for _, n := range q.Notes {
		if !q.besideNumber(n) {
			notes = append(notes, noted[n])
		}
	}
	if q.Has(Turn) {
		parts, notes = append(parts, notes...), nil // the turns name blocks too
	}
	for _, f := range told {
		for _, x := range q.Quantities {
			if second := f == LegAngle && q.Has(SecondLeg); x.Field == f && !second {
				parts = append(parts, q.phrase(x))
			}
		}
	}
	if q.Has(Alike) && q.Has(Weight) {
		parts = append(parts, "each")
	}
	parts = append(parts, q.swungPast(), q.onTwoLegs())
	parts = append(parts, notes...)
	if q.SaysUnits {
		parts = append(parts, systems[q.Units])
	}
	parts = slices.DeleteFunc(parts, func(s string) bool { return s == "" })
	return strings.Join(parts, ", ")
}

// besideNumber says whether a note is told in one breath with a number.
func (q Question) besideNumber(note string) bool {
	switch note {
	case NoteOnBlock, NoteLinePeak:
		return q.Has(Weight)
	case SnubOrRun, Snubbed, LetRun:
		return q.Noted(SnubOrRun) && q.Has(RunLength)
	}
	return false
}

// phrase writes one quantity with the words for its place, and what is told with it: what
// the block or the rope takes, which is no piece's weight, and that a line let run so far is
// weighed against one held fast.
func (q Question) phrase(x Quantity) string {
	switch {
	case x.Field == Weight && q.Noted(NoteOnBlock):
		return x.phrase() + " " + noted[NoteOnBlock]
	case x.Field == Weight && q.Noted(NoteLinePeak):
		return x.as(noted[NoteLinePeak] + " of #")
	case x.Field == RunLength && q.Noted(SnubOrRun) && slices.Index(q.Notes, Snubbed) < slices.Index(q.Notes, LetRun):
		return x.as("snub it or let it run #")
	case x.Field == RunLength && q.Noted(SnubOrRun):
		return x.as("let it run # or snub it")
	}
	return x.phrase()
}

// listed writes a list of pieces as it was told, a piece a line.
func (q Question) listed() string {
	lines := []string{asking[AskTree] + ":"}
	for _, p := range q.Pieces {
		lines = append(lines, p.Value)
	}
	return strings.Join(lines, "\n")
}

// onTwoLegs tells the angles of both legs in one breath.
func (q Question) onTwoLegs() string {
	a, one := q.Get(LegAngle)
	b, two := q.Get(SecondLeg)
	if !one || !two {
		return ""
	}
	return a.as("legs at #") + b.as(" and #")
}

// explaining are the words that ask for an explanation.
var explaining = map[string]string{ExplainNumbers: "show the numbers", ExplainAssumed: "what did you assume", ExplainBrush: "is the brush in it"}

// systems are the words that ask for a system of units.
var systems = map[System]string{Metric: "in metric", Imperial: "in imperial"}

// asking are the words that ask for each intent, where its facts may not.
var asking = map[Intent]string{
	AskWeight: "how heavy", AskLower: "lower it", AskLift: "lift it", AskRaise: "stand it up",
	AskBlockLoad: "what does the top block see", AskSwing: "swing", AskDrop: "negative rigging",
	AskRope: "how much rope", AskCutPlan: "how long a piece", AskNotch: "notch", AskGear: "working load",
	AskAnchor: "anchor check", AskBalance: "where does it balance", AskTree: "whole tree", AskJob: "job:",
	AskHelp: "help", AskLog: "show the log",
}

// piece is what is cut: condition, tree and shape.
func (q Question) piece() string {
	var out []string
	if q.Condition != nil {
		out = append(out, string(q.Condition.Value))
	}
	if q.Species != nil {
		name := q.Species.Value.Name
		if sci := q.Species.Value.Scientific; strings.HasSuffix(sci, "spp.") {
			name = sci // "oak" alone would be asked about
		}
		out = append(out, name)
	}
	if q.Shape != nil {
		out = append(out, string(q.Shape.Value))
	}
	return strings.Join(out, " ")
}

// told are the fields with their phrases, in the order in which a crew would
// tell them.
var told, phrases = inOrder([]phrase{
	{ButtDiameter, "# at the butt"}, {MidDiameter, "# in the middle"}, {TipDiameter, "# at the tip"},
	{Diameter, "# across"}, {Length, "# long"}, {Weight, "weighs #"}, {HitchHeight, "hitched at #"},
	{Parts, "# parts of line"}, {People, "# people"}, {WinchPull, "winch of #"}, {Efficiency, "sheave efficiency #"},
	{BlockAngle, "# between the legs"}, {Wraps, "# wraps"},
	{RopeLength, "rope length is #"}, {SecondRope, "or the # rope"}, {RopeDiameter, "# rope"}, {RopeBreak, "rope breaks at #"},
	{RopeWorking, "rope wll #"}, {BlockBreak, "block breaks at #"}, {BlockWorking, "block wll #"},
	{SlingBreak, "sling breaks at #"}, {SlingWorking, "sling wll #"}, {ConnectorBreak, "shackle breaks at #"},
	{ConnectorWorking, "shackle wll #"}, {DrumBreak, "drum breaks at #"}, {DrumWorking, "drum wll #"},
	{DesignFactor, "design factor #"}, {Legs, "# legs"}, {ChokeAngle, "choked at #"},
	{Payload, "payload #"}, {PersonPull, "each pulls #"}, {Redirects, "# redirects"}, {Turn, "rope turns #"},
	{DrumAway, "drum # from the tree"}, {Tail, "# of tail"}, {LandsOut, "lands # out from the tree"}, {DrumAcross, "# drum"}, {TrunkAcross, "# trunk"},
	{BlockBehind, "# behind the hinge"}, {BlockOut, "# out toward the limb"}, {Closed, "blocks take up #"},
	{Apart, "# between the blocks"}, {Rise, "# of rise"}, {LoadHeight, "load tied at #"}, {CutHeight, "cut at #"},
	{BlockBelow, "block # below the cut"}, {HitchAbove, "hitch # above the cut"}, {HitchToBlock, "tie point to block #"}, {MiddleAbove, "block to middle #"}, {DropHeight, "free fall of #"}, {RunLength, "# of run"}, {Limit, "limit is #"}, {LongestPiece, "no piece longer than #"},
	{Tie, "# out from the cut"}, {BlockHeight, "# above the cut"}, {LimbAngle, "# above level"},
	{Alike, "# alike pieces"}, {PieceHeight, "piece hanging at #"}, {LineOut, "# of line out"}, {Sideways, "# to the side"}, {StartAngle, "# from plumb"},
	{SecondTie, "tip line at #"}, {Lines, "# ropes at"}, {LegAngle, "leg angle #"},
	{SideBranch, "# side branch"}, {SideBranchOut, "sticking out #"}, {Strands, "# strand"},
})

type phrase struct {
	field Field
	words string // # is the number with its unit
}

func inOrder(all []phrase) (order []Field, words map[Field]string) {
	words = map[Field]string{}
	for _, p := range all {
		order, words[p.field] = append(order, p.field), p.words
	}
	return order, words
}

// swungPast is what a swing may strike, with its place right behind it.
func (q Question) swungPast() string {
	if q.Obstacle == nil {
		return ""
	}
	out := []string{q.Obstacle.Words}
	for _, p := range []phrase{{ObstacleOut, "# past the block"}, {ObstacleHeight, "# high"}} {
		if x, ok := q.Get(p.field); ok {
			out = append(out, x.as(p.words))
		}
	}
	return strings.Join(out, " ")
}

// noted are the words of each note.
var noted = map[string]string{
	"wet": "wet rope", "iced": "iced over", "bare-hands": "bare hands", "gusty": "gusts", NoteOnBlock: "on the block", FactorWanted: "what factor is that", NoteLinePeak: "peak", fallWanted: "how far does it fall", NoteHoldsBlock: "block sling", NoteBlockHung: "block on it", NoteDrumLoad: "load on the drum", "dark": "getting dark", "natural-crotch": "natural crotch", "about": "about", "rigging-ring": "rigging ring",
	NoteOverBlock: "over a block instead",
	"carabiner":   "carabiner", "connector": "connector", "swivel": "swivel", "screw-link": "screw link", "load-hook": "load hook", "ball-bearing": "ball bearing", "worn": "used rope", "replaced": "broken gear replaced", "bowline": "bowline",
	"second-stem": "second stem", NotePerVolume: "per cubic foot",
	"clove-hitch": "clove hitch", "timber-hitch": "timber hitch", "two-half-hitches": "half hitches",
	"snubbed": "snubbed", "let-run": "let it run", CutFalls: "negative rigging", "bridle": "bridle", "hang-level": "hang level", "hang-butt": "butt down", "hang-tip": "tip down",
	"rope-static": "static", "rope-low-stretch": "low stretch", "rope-stretchy": "stretchy", "rope-double-braid": "double braid",
	"rope-three-strand": "laid rope", "rope-kernmantle": "kernmantle", "rope-no-stretch": "no stretch",
	"eye-splice": "eye splice", "square-knot": "square knot", "overhand-knot": "overhand knot", "unlisted-hitch": "cow hitch",
	"figure-eight": "figure eight", NoteChoker: "choked", NoteBasket: "in a basket", NoteRatedBasket: "basket figure", "lean": "leaning",
	RedirectBlock: "redirect", BaseBlock: "base block", "bushed": "plain bushed", "small-pulley": "small pulley",
	HaulUp: "haul from the moving block", HaulDown: "haul from the top block", MovingBlock: "moving block",
	DeadEndOnTrunk: "dead end round the trunk", "dead-end-block": "dead end on the becket",
	NoteAnchorLimb: "anchor limb", NoteAnchorSpar: "anchor spar", "from-tip": "from the tip down", "bare": "leaves off", LeavesOn: "leaves on", TipHeavy: "brush on the outer half", NoBark: "no bark", MachineLimit: "crane limit", MachineAsked: "and the machine too", HalfLog: "half log split down the middle", NewTree: "new tree",
	"log-over": "what went over the limit", LogUnconfirmed: "what is unconfirmed", "log-unfinished": "what was never completed", "log-yesterday": "yesterday's log",
	"log-heaviest": "heaviest of the day", "log-total": "total for the day",
	gearWanted: "how strong should it be", MostWanted: "what's the most", PartsWanted: "how many parts of line", HighestWanted: "how high can i set the block", BlocksMeet: "do the blocks meet", AnchorLoad: "what does the anchor see", TravelWanted: "how far can it go before the blocks meet", TieWanted: "how far out can i tie", LowestWanted: "how high must the block be", TagPull: "how hard on the tag line",
	NoteTillLevel: "till its level", NoteEitherEnd: "butt tied or tip tied", HangWanted: "how low will it hang", WinchWanted: "what size winch",
	ThickWanted: "how thick may it be", MovedByHand: "can i carry it by hand",
	BlockUnder:    "block right under the cut",
	TooMany:       "too many",
	Slipped:       "slipped",
	NoteStartSide: "on the side it starts from",
	OverTrunk:     "block over the trunk",
	PeopleBelow:   "guys underneath", DrumAside: "drum at the next tree",
}

// phrase writes one quantity with the words for its place.
func (x Quantity) phrase() string { return x.as(phrases[x.Field]) }

func (x Quantity) as(words string) string {
	scale, name := x.unit()
	number := figured(x.Low / scale)
	if x.High != x.Low {
		number += "-" + figured(x.High/scale)
	}
	words += turnedAtBlock[x.At]
	return strings.Replace(words, "#", strings.TrimSpace(number+" "+name), 1)
}

// turnedAtBlock are the words of the block that a turn is at.
var turnedAtBlock = map[string]string{
	TopBlock: " at the top block", RedirectBlock: " at the redirect", BaseBlock: " at the base block",
	NaturalCrotch: " at the natural crotch", AnyBlock: " at the block",
}

// unit is what the quantity is told in.
func (x Quantity) unit() (scale float64, name string) {
	metric := x.System == Metric
	switch dim := DimensionOf[x.Field]; {
	case dim == DimAngle:
		return 1, "degrees"
	case dim == DimLength && (Thickness(x.Field) || x.Field == RopeDiameter || x.Field == DrumAcross || x.Field == TrunkAcross):
		if metric {
			return float64(unit.Centimetre), "cm"
		}
		return float64(unit.Inch), "in"
	case dim == DimLength && metric:
		return float64(unit.Metre), "m"
	case dim == DimLength:
		return float64(unit.Foot), "ft"
	case dim == DimMass && metric:
		return float64(unit.Kilogram), "kg"
	case dim == DimMass:
		return float64(unit.Pound), "lb"
	case dim == DimForce && metric:
		return float64(unit.Kilonewton), "kN"
	case dim == DimForce:
		return float64(unit.PoundForce), "lb"
	}
	return 1, ""
}

// figured writes a number plainly, to ten digits: enough for every number
// that was typed.
func figured(v float64) string {
	if v == 0 {
		return "0"
	}
	digits := max(0, 9-int(math.Floor(math.Log10(math.Abs(v)))))
	s := strconv.FormatFloat(v, 'f', digits, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// Thickness says whether a field is one of how thick a piece is.
func Thickness(f Field) bool {
	return f == Diameter || f == ButtDiameter || f == MidDiameter || f == TipDiameter
}

// A rope that is redirected turns at a block by some angle, which is not the
// angle between its legs there: the two add up to 180°. Only a word that says
// which of them is meant makes an angle a turn.

// The blocks of a rope's path that crews name, as the word file does.
const (
	TopBlock      = "top-block"
	AnyBlock      = "block"
	RedirectBlock = "redirect"
	BaseBlock     = "base-block"
	NaturalCrotch = "natural-crotch"
)
