package haul

import (
	"math"
	"slices"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Payloads are what a truck or trailer may carry.
var Payloads = limits.Range[unit.Mass]{Low: 50, High: 45000,
	Why: "likely a slip in the number or its unit"} // common practice, no source

// Trips are the loads that pieces take.
type Trips struct {
	Loads    int // of whole pieces
	ByWeight int // at the least, however they were cut
}

// Loads is how many loads whole pieces take, none over the payload:
//
//	ByWeight = ⌈Σm/p⌉
//	Loads:   each piece, the heaviest first, onto the first load it fits on
//
// It holds within Payloads, for pieces of more than no weight.
//
// The error is an *limits.OutOfRange, an *limits.Missing without a piece, or
// an *limits.Contradiction for a piece that is over the payload by itself: beside it
// ByWeight stands, for when it is cut.
//
// Errors: Loads may be more than the best of all ways to load needs, by two
// ninths and a part of a load at most; it is never fewer. Brush fills a truck
// before it weighs.
//
// Source: arithmetic; the bound on first-fit decreasing is that of Johnson
// (1973), 11/9 of the best and less than one more (from memory).
func Loads(pieces []unit.Mass, payload unit.Mass) (Trips, error) {
	if err := Payloads.Check(limits.Payload, payload); err != nil {
		return Trips{}, err
	}
	if len(pieces) == 0 {
		return Trips{}, &limits.Missing{Quantity: limits.Weight}
	}
	var sum, heaviest unit.Mass
	for _, m := range pieces {
		if !(m > 0) {
			return Trips{}, &limits.Missing{Quantity: limits.Weight}
		}
		sum, heaviest = sum+m, max(heaviest, m)
	}
	const bit = 1e-9 // of a load: sums of many pieces
	trips := Trips{ByWeight: int(math.Ceil(float64(sum/payload) - bit))}
	if limits.Above(heaviest, payload) {
		return trips, &limits.Contradiction{First: limits.Weight, Second: limits.Payload,
			Got: float64(heaviest), Limit: float64(payload), Why: "no load may be over it: cut the piece"}
	}
	trips.Loads = firstFit(pieces, payload*(1+bit))
	return trips, nil
}

// firstFit loads the pieces, the heaviest first, onto the first load that has
// room.
func firstFit(pieces []unit.Mass, payload unit.Mass) int {
	sorted := slices.Clone(pieces)
	slices.SortFunc(sorted, func(a, b unit.Mass) int {
		switch {
		case a > b:
			return -1
		case a < b:
			return 1
		}
		return 0
	})
	var loads []unit.Mass
	for _, m := range sorted {
		i := slices.IndexFunc(loads, func(l unit.Mass) bool { return l+m <= payload })
		if i < 0 {
			loads, i = append(loads, 0), len(loads)
		}
		loads[i] += m
	}
	return len(loads)
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	return []limits.Domain{Payloads.Domain("haul", limits.Payload)}
}
