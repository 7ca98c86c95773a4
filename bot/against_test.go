package bot

import (
	"testing"

	"heft/calc/unit"
)

// What is enough never reads as too little, and no figure is lighter than what it takes.
func TestAPullThatIsEnoughReadsAsEnough(t *testing.T) {
	// By hand: one person's 200 N is 44.96 lbf, told as 45, and 20.39 kgf.
	for _, c := range []struct {
		need, have  float64
		metric      bool
		takes, told string
	}{
		{199, 200, false, "45 lb", "45 lb"},       // 44.74 lbf
		{210.5, 212, false, "47.4 lb", "47.6 lb"}, // 47.32 of 47.66 lbf: one pound is too coarse
		{100, 200, false, "25 lb", "45 lb"},       // 22.48 lbf: nothing to refine
		{300, 200, false, "70 lb", "45 lb"},       // 67.44 lbf: too little stays too little
		{196.5, 200, true, "20.1 kg", "20.3 kg"},  // 20.04 kgf
	} {
		takes, told := speaker{metric: c.metric}.against(unit.Force(c.need), unit.Force(c.have))
		if takes != c.takes || told != c.told {
			t.Errorf("%g N of %g N: takes %s, have %s; want %s and %s", c.need, c.have, takes, told, c.takes, c.told)
		}
	}
}
