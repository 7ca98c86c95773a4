// Heft works out pieces of trees for rigging crews: see README.md. This
// package reads flags and environment and wires the rooms of the house
// together; it holds no arithmetic and no wording of answers.
package main
