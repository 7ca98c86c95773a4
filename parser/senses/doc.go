// Package senses settles words that are one thing here and another there: "log" the wood
// and the record, "drop" the fall and the wish, "tree" the wood and the anchor; and which
// of several pieces a number is told of.
package senses
