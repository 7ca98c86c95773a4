package lexicon

import (
	"testing"

	"heft/parser/scan"
)

func TestMalformedWordLinesAreNamed(t *testing.T) {
	lx := &Lexicon{Root: newRoot()}
	for _, line := range []string{
		"no bar here",
		"| limb",
		"shapely limb | limb",
		"role hitch_height_m sideways | hitched at",
		"role hitch_m after | hitched at",
		"role after | hitched at",
		"shape limb | limb,, branch",
		"filler |",
		"shape limbo | limb",
		"ask wait | wait",
		"stop now | stop",
	} {
		if err := lx.addLine(line); err == nil {
			t.Errorf("%q was taken", line)
		}
	}
	for _, line := range []string{"role people before? | hands", "ask gear? | sling", "place | roof, tree house"} {
		if err := lx.addLine(line); err != nil {
			t.Errorf("%q: %v", line, err)
		}
	}
}

func TestMalformedFormLinesAreNamed(t *testing.T) {
	lx := &Lexicon{Root: newRoot(), words: map[string]scan.LangSet{}, now: newDialect("xx", 1)}
	for _, line := range []string{"number dozen | douzaine", "number -1 | nul", "unit cubit | coudee", "join and | et", "decimal | point", "number 2 |", "alias | pc", "alias block up | blk"} {
		if err := lx.addLine(line); err == nil {
			t.Errorf("%q was taken", line)
		}
	}
	for _, line := range []string{"number x100 | cent", "number 1/2 | demi", "number + | et", "unit metre | metre", "join to? | a", "alias piece | pc", "decimal | comma", "unit | metre"} {
		if err := lx.addLine(line); err != nil {
			t.Errorf("%q: %v", line, err)
		}
	}
}
