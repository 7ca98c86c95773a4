// Package published reads the printed tables that the calculator's tests
// check against. A table is a CSV file that names its source in comments.
package published
