// Package keyring keeps the token of each workspace that installed the bot,
// encrypted, a file each.
package keyring
