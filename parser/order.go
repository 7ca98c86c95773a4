package parser

// What stands around words and numbers settles what they are, one thing after the
// other: each step finds what the steps before it have left.

// inOrder settles the elements of a message before the roles bind its numbers.
func (rd *reading) inOrder(l *layout) {
	rd.orderNumbers()
	rd.orderPlaces(l)
}

// orderNumbers settles which words are none of the question, and how large each
// number is.
func (rd *reading) orderNumbers() {
	rd.singleUnits()
	rd.slips()
	rd.otherwise()
	rd.already()
	rd.winds()
	rd.times()
	rd.bothEnds()
	rd.spokenHundreds()
	rd.toldRanges()
	rd.onePiece()
	rd.tried()
	rd.gluedKilos()
	rd.spacedCentimetres()
	rd.answerUnits()
	rd.bodies()
	rd.halves()
	rd.asksSmall()
	rd.hauled()
	rd.countedThings()
	rd.tellersHeight()
	rd.lend()
	rd.wagers()
	rd.supposed()
	rd.heldAgainst()
	rd.freshPieces()
	rd.needMore()
	rd.girths()
	rd.drooping()
	rd.compounds()
	rd.betweens()
	if rd.has(markTaper) {
		rd.tapers()
	}
	rd.fallings()
}

// orderPlaces settles whose each number is that a role must not take.
func (rd *reading) orderPlaces(l *layout) {
	rd.loadsAsked()
	rd.belowCut()
	rd.hitchBeforeRope()
	rd.dropTold()
	rd.gearSizes()
	rd.ropeLegs()
	rd.powers()
	rd.ledOver()
	rd.bareAngles()
	rd.wordedTurns()
	rd.turnRanges()
	rd.turns()
	rd.eachTurn()
	rd.eachPulls()
	rd.handPulls()
	rd.laid(l)
	rd.reaching(l)
	rd.movingBlock()
	rd.offsets()
	rd.blockOffsets()
	rd.blockOver()
	rd.swinging()
	rd.hanging()
	rd.loadsTold()
	rd.tensions()
	rd.ratings()
	rd.slingAngles()
	rd.onAnchor()
	rd.surroundings()
}
