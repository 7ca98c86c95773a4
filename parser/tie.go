package parser

// Where a piece is tied is also told as a part of its length, "a third out", or from its
// tip. The length may be told before or behind, and told anew in the next message.

// Along is a tie that was told by the length of the piece: that share of it from the
// cut, less what it was told to be short of it.
type Along struct {
	Share float64
	Short Quantity `json:",omitzero"` // from the tip; the zero quantity where only a share was told
}

// PlaceTie works such a tie out of the length, and keeps it open where no length is told.
func (q *Question) PlaceTie() {
	long, ok := q.Get(Length)
	for i, x := range q.Quantities {
		if x.Along == nil {
			continue
		}
		x.Field, x.Low, x.High, x.System = TieAlong, 0, 0, ""
		if short := x.Along.Short; ok && short.Low < long.Low {
			x.Field, x.System = Tie, long.System
			x.Low, x.High = long.Low*x.Along.Share-short.High, long.High*x.Along.Share-short.Low
		}
		q.Quantities[i] = x
	}
}
