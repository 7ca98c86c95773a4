package reading

// Share is the part of its length at which a limb is tied, and where that is said.
type Share struct {
	Start, End int
	Of         float64
	AtEnd      bool // told by the name of that end: "tip tied"
}
