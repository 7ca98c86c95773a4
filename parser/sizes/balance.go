package sizes

import (
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// BalancedAt leaves to be asked where a piece is told to balance, "balances at 11 ft
// from the butt": that is no tie, and a pull worked with it for one would be wrong. "The
// balance point of 24 ft limbs" tells how long they are.
func BalancedAt(rd *reading.Reading) {
	for i, e := range rd.Elems {
		words := rd.At(rd.Past(rd.Back(i-1), -1, lexicon.MarkAt|lexicon.MarkIs))
		if gear.Far(rd, i) && e.Fig.Told == "" && !rd.At(i+1).Piece() && rd.Cued(words, lexicon.CueBalances) {
			e.Fig.Elsewhere = true
		}
	}
}
