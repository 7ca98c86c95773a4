// Package pulls reads who or what pulls, how hard and at what angle, and which of the
// forces that are told is which.
package pulls
