// Package wood knows how heavy the wood and bark of a tree are when green:
// one row a tree, from published tables, with how far each figure can be
// trusted.
package wood
