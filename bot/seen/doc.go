// Package seen remembers, for a while, which events were taken and what each
// conversation established. It may forget: the journal is the record.
package seen
