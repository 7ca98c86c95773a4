package bot_test

import (
	"strings"
	"testing"
)

// TestADrumOffTheTreeOpensTheLegs says how far apart the legs stand and what the block sees
// then: 30 ft out under 50 ft is 31°, and 2 × 450 lb × cos 15.5° = 867 lb, 870 on the safe side.
func TestADrumOffTheTreeOpensTheLegs(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	r, _ := k.say("450 lb load, block 50 ft up, drum on another tree 30 ft away, what does the top block see", "1")
	if !strings.Contains(r.Headline(), "top block 900 lb") || !strings.Contains(r.Text(), "31° apart: 870 lb") {
		t.Errorf("the drum's angle is not told: %s", r.Text())
	}
	if r, _ := k.say("450 lb log, block 50 ft up, drum at the base, what does the top block see", "2"); strings.Contains(r.Text(), "apart") {
		t.Errorf("legs side by side are told apart: %s", r.Text())
	}
}
