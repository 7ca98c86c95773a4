// Package stops finds what ends all arithmetic: somebody hurt or below, a rope that is
// stuck or runs away, wood or gear that is not sound, a way of working that no method
// here holds for. A stop needs a thing and its state or place, never one word alone.
package stops
