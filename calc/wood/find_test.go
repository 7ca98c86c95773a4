package wood_test

import (
	"testing"

	"heft/calc/wood"
)

func find(t *testing.T, scientific string) wood.Row {
	t.Helper()
	r, ok := wood.Find(scientific)
	if !ok {
		t.Fatalf("%s is not in the table", scientific)
	}
	return r
}
