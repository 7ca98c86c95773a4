package parser

// Dimension is what a measure measures.
type Dimension int

// DimensionOf says what a field is measured in; a field that is not here is
// counted.
var DimensionOf = map[Field]Dimension{
	Diameter: DimLength, ButtDiameter: DimLength, MidDiameter: DimLength, TipDiameter: DimLength,
	Length: DimLength, HitchHeight: DimLength, RopeLength: DimLength, SecondRope: DimLength, DropHeight: DimLength,
	RunLength: DimLength, BlockBelow: DimLength, HitchAbove: DimLength, HitchToBlock: DimLength, MiddleAbove: DimLength, BlockHeight: DimLength, Tie: DimLength,
	LongestPiece: DimLength, DrumAway: DimLength, Tail: DimLength, LandsOut: DimLength, DrumAcross: DimLength, TrunkAcross: DimLength, BlockBehind: DimLength, BlockOut: DimLength, Closed: DimLength, Apart: DimLength, Rise: DimLength, LoadHeight: DimLength, CutHeight: DimLength,
	LineOut: DimLength, Sideways: DimLength, PieceHeight: DimLength, RopeDiameter: DimLength,
	ObstacleOut: DimLength, ObstacleHeight: DimLength,
	SecondTie: DimLength, SideBranchOut: DimLength, SideBranch: DimMass, LegAngle: DimAngle, SecondLeg: DimAngle,
	Weight: DimMass, Limit: DimMass,
	WinchPull: DimForce, PersonPull: DimForce, RopeBreak: DimForce, RopeWorking: DimForce, BlockBreak: DimForce, BlockWorking: DimForce,
	SlingBreak: DimForce, SlingWorking: DimForce, ConnectorBreak: DimForce, ConnectorWorking: DimForce,
	DrumBreak: DimForce, DrumWorking: DimForce, Payload: DimMass,
	ChokeAngle: DimAngle, DesignFactor: DimRatio,
	BlockAngle: DimAngle, LimbAngle: DimAngle, StartAngle: DimAngle, Turn: DimAngle,
	Parts: DimRatio,
}

const (
	DimCount Dimension = iota // a bare number
	DimLength
	DimMass
	DimForce
	DimAngle
	DimRatio // 2:1
)
