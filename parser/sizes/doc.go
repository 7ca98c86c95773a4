// Package sizes decides how large a number is where its unit is not said: by the
// numbers beside it, by what it measures, by what the trade leaves possible. It asks which
// ton, and turns a girth into a diameter only where it is said to be one.
package sizes
