package limits

import "strings"

// Quantity is the machine-readable name of something a crew says. The suffix
// tells the unit: _m metres, _kg kilograms, _n newtons, _deg degrees; no
// suffix is a plain number.
type Quantity string

// The quantities the calculator checks.
const (
	Species      Quantity = "species"
	Diameter     Quantity = "diameter_m"
	ButtDiameter Quantity = "butt_diameter_m"
	MidDiameter  Quantity = "mid_diameter_m"
	TipDiameter  Quantity = "tip_diameter_m"
	Length       Quantity = "length_m"
	Weight       Quantity = "weight_kg"
	HitchHeight  Quantity = "hitch_height_m"
	People       Quantity = "people"
	Parts        Quantity = "parts"
	Wraps        Quantity = "wraps"
	Angle        Quantity = "angle_deg"
	Efficiency   Quantity = "efficiency"
	Tension      Quantity = "tension_n"
	Winch        Quantity = "winch_n"
	PersonPull   Quantity = "person_pull_n"
	Redirects    Quantity = "redirects"
	Turn         Quantity = "turn_deg"
	Side         Quantity = "side_deg"
	Rise         Quantity = "rise_m"
	Apart        Quantity = "apart_m"
	BlockHeight  Quantity = "block_height_m"
	Offset       Quantity = "offset_m"
	Tie          Quantity = "tie_m"
	SecondTie    Quantity = "second_tie_m"
	LimbAngle    Quantity = "limb_angle_deg"
	BalancePoint Quantity = "balance_point_m"
	LineLength   Quantity = "line_m"
	Sideways     Quantity = "sideways_m"
	Drop         Quantity = "drop_m"
	Run          Quantity = "run_m"
	RopeBreak    Quantity = "rope_mbs_n"
	RopeLength   Quantity = "rope_m"
	DrumAway     Quantity = "drum_away_m"
	LandsOut     Quantity = "lands_out_m"
	RopeTail     Quantity = "tail_m"
	DrumDiameter Quantity = "drum_diameter_m"
	TrunkAcross  Quantity = "trunk_diameter_m"
	Stiffness    Quantity = "rope_stiffness"
	Limit        Quantity = "limit_kg"
	Obstacle     Quantity = "obstacle_out_m"
	ObstacleTop  Quantity = "obstacle_height_m"
	WorkingLoad  Quantity = "working_load_n"
	DesignFactor Quantity = "design_factor"
	LineShare    Quantity = "line_share"
	Lever        Quantity = "lever_m"
	Legs         Quantity = "legs"
	LegAngle     Quantity = "leg_angle_deg"
	ChokeAngle   Quantity = "choke_angle_deg"
	Payload      Quantity = "payload_kg"
)

// units spells the suffixes out.
var units = map[string]string{"m": " m", "kg": " kg", "n": " N", "deg": " degrees"}

// words splits the name into what it is called and the unit written behind a
// figure.
func (q Quantity) words() (name, unit string) {
	name = string(q)
	if i := strings.LastIndexByte(name, '_'); i >= 0 {
		if u, ok := units[name[i+1:]]; ok {
			name, unit = name[:i], u
		}
	}
	return strings.ReplaceAll(name, "_", " "), unit
}
