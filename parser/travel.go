package parser

// How far a lift goes, and how much rope comes in, hang on no weight and on no tree:
// only on how far apart the blocks are, how far the load comes up, and the parts of line.

// OfTravel says whether a lift is answered by how far it goes: where that is asked, or
// where it is told and nothing that a pull could be worked out from.
func (q Question) OfTravel() bool {
	if q.Intent != AskLift || q.MostWanted() {
		return false
	}
	forces := q.Has(People, WinchPull, PersonPull) || q.PartsWanted()
	piece := q.Species != nil || q.Has(Across...) || q.Has(Weight)
	return q.Noted(TravelWanted) || q.Has(Apart, Rise) && !forces && !piece
}

// OfPull says whether it is asked what a pull that is told puts on its anchor: no weight
// has a part in it.
func (q Question) OfPull() bool {
	return q.Intent == AskLift && q.Noted(AnchorLoad) && q.Pieceless() && q.Has(Parts) && q.Has(WinchPull, PersonPull)
}

// missingTravel is what such an answer still needs: how much rope comes in hangs on the
// parts of line, whether the blocks meet does not.
func (q Question) missingTravel() []Field {
	if !q.Has(Apart, Rise) {
		return append([]Field{Rise}, q.Without([]Field{Parts})...)
	}
	return nil
}
