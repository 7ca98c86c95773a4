// Package limits keeps what a formula needs to hold: ranges of validity as
// data, and the errors that say which quantity broke which of them. Numbers
// in the errors are plain SI, so that whoever words them may choose the
// crew's own units.
package limits
