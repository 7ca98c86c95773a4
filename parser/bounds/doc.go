// Package bounds reads the most that a piece may weigh, or a block may bear: also where
// it is told by what nobody wants, "never over 500", or by what each cut should weigh.
package bounds
