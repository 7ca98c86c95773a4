package wood

import "heft/calc/unit"

// Basis says what a row's figures were measured on.
type Basis int

// The kinds of figures, best first.
const (
	Species      Basis = iota // the species itself
	GenusAverage              // the mean of its genus
	GroupDefault              // the one figure for all softwoods or all hardwoods
	AnyOfGroup                // any softwood or hardwood: see Groups
)

// Row is one tree of the table. A genus as a whole is the row "Quercus spp.".
type Row struct {
	Common, Scientific string
	Softwood           bool
	Palm               bool    // neither wood nor bark: see Weighable
	WoodSG             float64 // oven-dry mass over green volume, over that of water
	WoodMoisture       float64 // green, percent of the oven-dry mass
	BarkSG             float64
	BarkMoisture       float64
	BarkOfWood         float64 // bark volume in percent of the wood volume, not of the whole
	Basis              Basis
	Note               string
	// Heavier is the green density over bark in a second published table, 0
	// where there is none. It is the heavier of the two for most trees, and
	// nearly the same for the rest.
	Heavier unit.Density
	// OwnSG is the specific gravity of the tree's own wood, where the figures
	// above are not its own: see Soaked. 0 where none is needed.
	OwnSG float64

	lightest, heaviest, unsure, soaked unit.Density // of the genus's other rows; genus rows only
}

// Unweighable says that a tree's figures do not describe what it is made of.
type Unweighable struct {
	Common, Scientific string
	Why                string // one short plain clause
}

// Error says it in plain English.
func (e *Unweighable) Error() string {
	return "no weight for " + e.Common + ": " + e.Why
}

// Weighable returns an *Unweighable for a palm. The forest service's table
// gives palms the default of all hardwoods, which says nothing about a stem
// of fibres and water.
func (r Row) Weighable() error {
	if !r.Palm {
		return nil
	}
	return &Unweighable{Common: r.Common, Scientific: r.Scientific,
		Why: "a palm is not wood and bark, and no published green weight was found"}
}
