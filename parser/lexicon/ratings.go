package lexicon

import "heft/parser/scan"

// The parts.
const (
	PartRope      scan.Part = "rope"
	PartBlock     scan.Part = "block"
	PartSling     scan.Part = "sling"
	PartConnector scan.Part = "connector"
	PartDrum      scan.Part = "drum"
)

// The two figures.
const (
	Breaking scan.Strength = "mbs"
	Working  scan.Strength = "wll"
)
