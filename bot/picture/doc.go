// Package picture draws a scene as a PNG for the screen of a phone: a side
// view to scale, 400 pixels wide at twice the resolution. It knows no formula
// and no unit, and it words nothing.
//
// A scene is first laid out as a list of plain shapes and texts, then painted.
// The same scene gives the same bytes. Nothing is told by colour alone: each
// kind of mark has a form, a dash or a hatch of its own, and every line stands
// out from what it lies on in grey as well.
package picture
