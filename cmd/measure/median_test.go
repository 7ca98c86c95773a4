package main

import (
	"slices"
	"testing"
	"time"
)

func TestMedian(t *testing.T) {
	for _, c := range []struct {
		values []float64
		want   float64
	}{
		{nil, 0},
		{[]float64{4}, 4},
		{[]float64{9, 1, 2}, 2},             // the mean would be 4
		{[]float64{10, 1, 3, 2}, 2.5},       // halfway between 2 and 3
		{[]float64{1, 1, 1, 1000, 1000}, 1}, // two rounds that something disturbed
		{[]float64{-3, 5, -1, 0.5, 0.25}, 0.25},
	} {
		before := slices.Clone(c.values)
		if got := median(c.values); got != c.want {
			t.Errorf("median of %v is %v, want %v", c.values, got, c.want)
		}
		if !slices.Equal(before, c.values) {
			t.Errorf("%v became %v", before, c.values)
		}
	}
	if got := median([]time.Duration{7 * time.Millisecond, time.Second, 4 * time.Millisecond}); got != 7*time.Millisecond {
		t.Errorf("median of times is %v, want 7ms", got)
	}
}
