// Package journal keeps every question and its answer in one SQLite file.
//
// All changes go through a single writer. It commits the entries that wait
// for it together, with synchronous FULL, and lets go of their callers only
// when the disk has them. Readers look at the last commit and hold nobody up,
// in this process or in another.
package journal
