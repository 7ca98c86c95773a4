package gear

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LoadsAsked makes a word for how much, before gear that feels a load, ask for that
// load: "how much does the drum sling get", "qué carga tiene la eslinga".
func LoadsAsked(rd *reading.Reading) {
	for i := range rd.Elems {
		feelsAsked(rd, i)
		at := bearer(rd, i)
		if at < 0 {
			continue
		}
		rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides, t.Ask = parser.AskBlockLoad, false, "" })
		lendAsked(rd, i)
		if ofDrum(rd, at) {
			rd.Alter(i, func(t *scan.Term) { t.Note = parser.NoteDrumLoad })
		}
		for k := i + 1; k <= at+1 && k < len(rd.Elems); k++ {
			if t := rd.TermAt(k); t.Intent == parser.AskGear || t.Intent == parser.AskRope {
				rd.Alter(k, func(t *scan.Term) { t.Intent = "" })
			}
		}
	}
}

// feelsAsked makes the verb behind gear that holds a load ask for that, where no number
// answers it: "si pongo dos, ¿el anclaje recibe menos?".
func feelsAsked(rd *reading.Reading, i int) {
	const near = 3
	if verb := rd.At(i + 1); !rd.Cued(verb, lexicon.CueFeels) || !holdsLoad(rd, i) || rd.TermAt(i+1).Intent != "" {
		return
	}
	for k := i + 2; k <= i+near; k++ {
		if rd.At(k).Fig != nil {
			return // "la polea recibe 400 kg"
		}
	}
	rd.Alter(i+1, func(t *scan.Term) { t.Intent, t.Besides, t.Ask = parser.AskBlockLoad, false, "" })
}

// holdsLoad says whether the word at i names gear that holds a load, or an anchor.
func holdsLoad(rd *reading.Reading, i int) bool {
	return hangsOn(rd, i) || rd.TermAt(i).Anchors || rd.Cued(rd.Elems[i], lexicon.CueSeesLoad)
}

// hangsOn says whether the word at i names gear that a load hangs on: a block by its place as
// well, "the pulley at the top".
func hangsOn(rd *reading.Reading, i int) bool {
	switch Part(rd.At(i)) {
	case lexicon.PartSling, lexicon.PartDrum, lexicon.PartConnector, lexicon.PartBlock:
		return true
	}
	return rd.TermAt(i).Block != ""
}

// lendAsked gives the one bare number the unit that the answer is asked in: "how many
// lbs on the sling with 820".
func lendAsked(rd *reading.Reading, i int) {
	words := strings.Fields(rd.Word(rd.Elems[i]))
	u := rd.In.Units[words[len(words)-1]]
	if u == nil || u.Dim != parser.DimMass {
		return
	}
	for _, e := range rd.Elems {
		if f := e.Fig; f != nil && f.Dim == parser.DimCount && f.Unit == nil && Rates(f) {
			f.Unit, f.Dim, f.Low, f.High = u, parser.DimMass, f.Low*u.Factor, f.High*u.Factor
			return
		}
	}
}

// bearer is the gear whose load is asked for by the word at i, -1 for none: gear that
// something is on, or that is told to feel it. What it can take is its strength.
func bearer(rd *reading.Reading, i int) int {
	const most = 6
	if !rd.TermAt(i).HowMuch {
		return -1
	}
	if !rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && Rates(rd.Elems[k].Fig) }) {
		if rd.First {
			return -1
		}
		return bearerBefore(rd, i) // of the load that was spoken of
	}
	felt := rd.TermAt(i).Receives
	for k := i + 1; k <= i+most && bare(rd, k); k++ {
		felt = felt || rd.TermAt(k).Receives || k == i+1 && rd.At(k).Marked(lexicon.MarkIn)
		if hangsOn(rd, k) {
			if p := Part(rd.At(k + 1)); p != "" && p != lexicon.PartRope {
				k++ // "the drum sling"
			}
			if felt || receivesAfter(rd, k) {
				return k
			}
		}
	}
	if k := bearerBefore(rd, i); k >= 0 {
		return k
	}
	return bearerMeant(rd, i)
}

// bearerMeant is the block that alone is named before "what does it see", -1 where other gear
// is too, or none: "top block with 300 kg hanging on it, what does it see".
func bearerMeant(rd *reading.Reading, i int) int {
	if verb := rd.Past(i+1, +1, lexicon.MarkPronoun); verb > i+2 || !rd.TermAt(verb).Receives || rd.At(i-1).Pause == 0 {
		return -1
	}
	at := -1
	for k := range i {
		block := Part(rd.Elems[k]) == lexicon.PartBlock || rd.TermAt(k).Block != ""
		if Part(rd.Elems[k]) == "" && !rd.Elems[k].Piece() && !block {
			continue
		}
		if at >= 0 || !block {
			return -1
		}
		at = k
	}
	return at
}

// bearerBefore is the gear, or the anchor, that is named before the word at i, which asks
// what it gets: "la polea de arriba cuánto recibe", "the top block how much does it see".
// It is -1 for none.
func bearerBefore(rd *reading.Reading, i int) int {
	k := i - 1
	for rd.At(k).Pause == 2 || rd.TermAt(k).HowMuch || rd.At(k).Polite() {
		k-- // "qué carga"
	}
	k = rd.Past(k, -1, lexicon.MarkPronoun|lexicon.MarkArticle)
	if k < 0 || !receivesAfter(rd, i) {
		return -1
	}
	if holdsLoad(rd, k) {
		return k
	}
	return -1
}

// receivesAfter reads "the shackle at the block see".
func receivesAfter(rd *reading.Reading, i int) bool {
	const most = 3
	for k := i + 1; k <= i+most && bare(rd, k); k++ {
		if rd.TermAt(k).Receives {
			return true
		}
	}
	return false
}

// bare says whether the element at i is neither number nor rope, nor what else could
// be asked about: a strength, wraps, a piece.
func bare(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	counted := Part(e) == "" && (e.Plays(parser.Wraps) || e.Plays(parser.People))
	return e.Term != nil && e.Pause == 0 && !e.Piece() && Part(e) != lexicon.PartRope && Strength(e) == "" && !counted && !rd.TermAt(i).Rated
}

// HoldAsked says whether nothing is asked but what gear holds, and no piece is told: "soga
// de 5/8, ¿qué aguanta?", "how much does my rope hold".
func HoldAsked(rd *reading.Reading, q parser.Question) bool {
	if q.Intent != parser.AskLower || !q.Pieceless() || q.Shape != nil || q.Has(parser.Wraps, parser.People, parser.HitchHeight) {
		return false
	}
	named, other := false, false
	for i, e := range rd.Elems {
		t := rd.TermAt(i)
		named = named || Part(e) == lexicon.PartRope || Part(e) == lexicon.PartSling
		other = other || t.Intent == parser.AskLower && !t.Bears || e.Plays(parser.Wraps) || e.Plays(parser.People)
	}
	return named && !other
}

// LoadWanted says whether the load on gear is asked for, so that a number without a
// word for it is no strength of the gear.
func LoadWanted(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return bearer(rd, i) >= 0 })
}

// ofDrum says whether the gear at i is the drum, or holds it.
func ofDrum(rd *reading.Reading, i int) bool {
	if Part(rd.At(i)) == lexicon.PartBlock {
		return false
	}
	after := Part(rd.At(rd.Past(i+1, +1, lexicon.MarkIn|lexicon.MarkMade|lexicon.MarkArticle|lexicon.MarkRelation)))
	return Part(rd.At(i)) == lexicon.PartDrum || Part(rd.At(i-1)) == lexicon.PartDrum || after == lexicon.PartDrum
}

// LoadsTold takes the number beside words for the load on a block for that load,
// where the strength of what holds it is told or asked about.
func LoadsTold(rd *reading.Reading) {
	lowers := func(i int) bool { return rd.TermAt(i).Intent == parser.AskLower && !gearHolds(rd, i) }
	if rd.Worded(parser.Wraps) || AsksFor(rd, parser.AskLift) || AsksFor(rd, parser.AskDrop) || !rd.AnyAt(rd.Is(heldAt)) {
		return
	}
	lowered := rd.AnyAt(lowers)
	for i := range rd.Elems {
		// A piece may hang on the block that it is lowered from; nobody weighs it in kN.
		if !Heavy(rd, i) || lowered && rd.Elems[i].Fig.Dim != parser.DimForce || rd.Elems[i].Fig.Told != "" || rd.At(i+1).Piece() {
			continue
		}
		if s, _ := StrengthBeside(rd, i-1, i+1); s != "" {
			continue
		}
		if at := onBlock(rd, i); at >= 0 {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Sure = parser.Weight, parser.Weight
			rd.Alter(at, func(t *scan.Term) { *t = scan.Term{Note: parser.NoteOnBlock, Intent: parser.AskGear, Part: t.Part} })
			for k := range rd.Elems {
				if gearHolds(rd, k) {
					rd.Alter(k, func(t *scan.Term) { t.Intent = "" })
				}
			}
			return
		}
	}
}

// gearHolds says whether the word at i asks whether gear before it holds: "will the
// sling hold".
func gearHolds(rd *reading.Reading, i int) bool {
	p := Part(rd.At(i - 1))
	return rd.TermAt(i).Intent == parser.AskLower && (p == lexicon.PartSling || p == lexicon.PartConnector || p == lexicon.PartBlock)
}

// heldAt says whether the word at i tells a strength, or names what a block hangs in.
func heldAt(rd *reading.Reading, i int) bool {
	p := Part(rd.Elems[i])
	return Strength(rd.Elems[i]) != "" || rd.TermAt(i).Rated || p == lexicon.PartSling || p == lexicon.PartConnector
}

// onBlock finds the words that make the number at i the load of a block, -1 for none.
func onBlock(rd *reading.Reading, i int) int {
	before := i - 1
	for t := rd.TermAt(before); before > 0 && i-before < reading.WordsApart && bare(rd, before) && len(t.Roles) == 0 && t.Intent == "" && t.Part == "" && !t.Receives; t = rd.TermAt(before) {
		before-- // "block load worked out at"
	}
	switch {
	case rd.TermAt(before).Intent == parser.AskBlockLoad && !rd.TermAt(before).HowMuch && !loadWith(rd, before, i):
		return before
	case rd.TermAt(before).Receives && Part(rd.At(before-1)) == lexicon.PartBlock:
		return before
	case rd.TermAt(i+1).Intent == parser.AskBlockLoad, rd.Elems[i].Fig.Dim == parser.DimForce && rd.TermAt(i+1).Block == parser.AnyBlock:
		return i + 1
	}
	if rd.TermAt(i+1).Receives && Part(rd.At(i+2)) == lexicon.PartBlock {
		return i + 2 // "3000 lb on the trunk block"
	}
	j := rd.Past(i+1, +1, lexicon.MarkIn|lexicon.MarkArticle|lexicon.MarkRelation)
	if j > i+1 && rd.At(i+1).Marked(lexicon.MarkIn) && Part(rd.At(j)) == lexicon.PartBlock {
		return j
	}
	return -1
}

// loadWith says whether the words at i ask what a block sees "with" the number at j on its
// rope: "what does the block see with 2800 lb, block is 90 kN MBS".
func loadWith(rd *reading.Reading, i, j int) bool {
	for k := i + 1; k < j; k++ {
		if rd.TermAt(k).Employs {
			return true
		}
	}
	return false
}
