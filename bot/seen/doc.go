// Package seen remembers, for a while and in memory alone, which events were
// taken and what each conversation had established. It may be lost at any
// time: the journal is the record.
package seen
