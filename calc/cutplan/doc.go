// Package cutplan divides a stick into pieces that stay under a weight: the
// longest piece from either end, and the whole of it piece by piece.
//
// Every piece is weighed by calc/piece and judged by its heavy end. Lengths
// are exact: whoever says them rounds them down.
package cutplan
