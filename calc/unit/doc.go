// Package unit gives every quantity of a rigging question a type of its own,
// held in SI: a mass is not a force, and a length is not a bare number.
package unit
