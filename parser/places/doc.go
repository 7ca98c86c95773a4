// Package places decides whose a number is. Words bind the numbers beside them, at a
// cost; the assignment that costs least is taken; a bare number takes the one place that
// the trade leaves it, or is asked about.
package places
