// Package redirect works out what each block of a rope's path carries and
// which way it is pulled, in rope order from the load to the hands, and
// whether that pull pushes along a limb or bends it.
package redirect
