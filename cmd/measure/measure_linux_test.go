package main

import (
	"bytes"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"
)

// TestQuick builds what is measured and goes once through everything. It
// looks whether every row has a figure, never how large it is.
func TestQuick(t *testing.T) {
	var out, progress bytes.Buffer
	if code := run(t.Context(), []string{"-quick"}, &out, &progress); code != 0 {
		t.Fatalf("exit %d\n%s", code, progress.String())
	}
	printed, about, _ := strings.Cut(out.String(), "\n\n")
	rows := cells(printed)
	if len(rows) != 6 {
		t.Fatalf("%d rows, want 6:\n%s", len(rows), out.String())
	}
	for _, row := range rows {
		f, err := strconv.ParseFloat(row[3], 64)
		if err != nil || math.IsInf(f, 0) || !(f > 0) {
			t.Errorf("%s: the median is %q", row[0], row[3])
		}
	}
	if !strings.Contains(about, "Rounds: 1, each with 1 starts, 80 questions") || !strings.HasSuffix(about, " ms.\n") {
		t.Errorf("what it was measured on: %q", about)
	}
}

func TestWrongUseFails(t *testing.T) {
	if code := run(t.Context(), []string{"-rounds", "none"}, io.Discard, io.Discard); code != 1 {
		t.Errorf("exit %d, want 1", code)
	}
}
