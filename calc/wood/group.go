package wood

// All trees of a kind, for a piece of which no more is known: "some hardwood".
const (
	AnyHardwood = "Magnoliopsida spp."
	AnySoftwood = "Pinopsida spp."
)

// Groups returns the rows of AnyHardwood and AnySoftwood. Their own figure is
// the one that the table gives all trees of the group; they run from the
// lightest to the heaviest mean of any of them, and soaked are no lighter than
// the heaviest. The slice is the caller's.
func Groups() []Row {
	t := table()
	return []Row{t.group(AnyHardwood, "hardwood", false), t.group(AnySoftwood, "softwood", true)}
}

// group makes the row of all hardwoods, or of all softwoods.
func (t *species) group(scientific, common string, softwood bool) Row {
	var g Row
	for _, r := range t.rows {
		if r.Softwood == softwood && r.Basis == GroupDefault && !r.Palm {
			g = r
			break
		}
	}
	g.Common, g.Scientific, g.Basis, g.Note, g.Heavier = common, scientific, AnyOfGroup, "", 0
	g.OwnSG, g.lightest, g.heaviest, g.unsure, g.soaked = 0, g.Green(), g.Green(), 0, 0
	for _, r := range t.rows {
		if r.Softwood != softwood || r.Palm {
			continue
		}
		g.unsure, g.soaked = max(g.unsure, r.Unsure()), max(g.soaked, r.Soaked())
		if r.Basis != GroupDefault {
			g.lightest, g.heaviest = min(g.lightest, r.Light()), max(g.heaviest, r.Heavy())
		}
	}
	return g
}
