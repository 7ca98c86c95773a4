// Package scan cuts a text into words, numbers and pauses, by a Tongue: what one
// language, helped out by another, says of how numbers and units are written.
package scan
