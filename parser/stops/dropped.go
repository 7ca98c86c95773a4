package stops

import (
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Gear that fell on something hard may be cracked where nobody sees it: whether
// it is still good is for whoever inspects it.

// LetFall says whether the word at i tells that gear fell, and the message that
// it hit something hard, that no harm is seen on it, or asks whether it is still
// good: "dropped the block on the driveway". A block is also dropped to another
// height.
func LetFall(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).LetFall || !rd.AnyAt(func(k int) bool { return rd.TermAt(k).AfterFall || spared(rd, k) }) {
		return false
	}
	j, k := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective), i-1
	for k >= 0 && i-k < 6 && !Hardware(rd, k) && tells(rd, k) {
		k--
	}
	return Hardware(rd, j) || Hardware(rd, k)
}

// DroppedOn says whether the word at i drops a piece on gear that is told with what it
// bears, "drum rated 2000 lb, log 650, dropped": that is no load at rest.
func DroppedOn(rd *reading.Reading, i int) bool {
	rated := func(k int) bool { return gear.Strength(rd.Elems[k]) != "" || rd.TermAt(k).Rated }
	return rd.AnyAt(rated) && rd.AnyAt(rd.Is(gear.Heavy)) && (hungWood(rd, i-1) || rd.At(i-1).Fig != nil || rd.At(i-1).Pause > 0 || hungWood(rd, i+1))
}

// Hardware says whether the element at i is gear of metal: a rope that falls
// takes no harm.
func Hardware(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return Kit(rd, i) && !e.Marked(lexicon.MarkCord) && gear.Part(e) != lexicon.PartRope
}

// spared says whether the damage at i is told to be none: "no cracks".
func spared(rd *reading.Reading, i int) bool { return rd.TermAt(i).Damaged && rd.TermAt(i-1).Lacks }

// denied says whether the damage at i is what is not seen on gear that fell, "no
// cracks i can see", or what is told where no wood is.
func denied(rd *reading.Reading, i int) bool {
	wood := func(k int) bool { return rd.Elems[k].Piece() || rd.TermAt(k).Tree != nil || rd.TermAt(k).Unnamed }
	return (spared(rd, i) || !rd.AnyAt(wood)) && rd.AnyAt(rd.Is(LetFall))
}
