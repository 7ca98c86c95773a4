// Package haul works out how many loads the pieces of a tree are for a truck.
package haul
