package lexicon

import "heft/parser/scan"

const (
	After scan.Side = 1 << iota
	Before
)
