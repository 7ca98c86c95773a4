package main

import "slices"

// number is what has a middle.
type number interface{ ~int64 | ~float64 }

// median is the middle value, or the mean of the two in the middle; 0 where
// there is none. Its argument keeps its order.
func median[N number](values []N) N {
	sorted := slices.Sorted(slices.Values(values))
	n := len(sorted)
	switch {
	case n == 0:
		return 0
	case n%2 == 1:
		return sorted[n/2]
	}
	return (sorted[n/2-1] + sorted[n/2]) / 2
}

// figures are one figure of each round.
func figures(rounds []round, of func(round) float64) []float64 {
	list := make([]float64, len(rounds))
	for i, r := range rounds {
		list[i] = of(r)
	}
	return list
}
