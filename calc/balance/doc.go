// Package balance works out how a piece hangs: where to tie it so that it
// goes level, butt-heavy or tip-heavy, how two lines share it, how hard a
// side branch rolls it, and what pulls it aside on a tag line.
//
// Distances along the piece are from the cut.
package balance
