package picture_test

import (
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"heft/bot"
	"heft/bot/picture"
)

var update = flag.Bool("update", false, "write the pictures as they are now; then look at every one that changed")

func golden(t testing.TB) map[string]bot.Scene {
	t.Helper()
	files, err := filepath.Glob("testdata/*.json")
	if err != nil || len(files) < 10 {
		t.Fatalf("%d scenes, %v", len(files), err)
	}
	out := map[string]bot.Scene{}
	for _, f := range files {
		raw, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		var s bot.Scene
		if err := json.Unmarshal(raw, &s); err != nil {
			t.Fatalf("%s: %v", f, err)
		}
		out[f[:len(f)-len(".json")]] = s
	}
	return out
}

func TestPictures(t *testing.T) {
	for name, scene := range golden(t) {
		t.Run(filepath.Base(name), func(t *testing.T) {
			got, err := picture.PNG(scene)
			if err != nil {
				t.Fatal(err)
			}
			if *update {
				if err := os.WriteFile(name+".png", got, 0o644); err != nil {
					t.Fatal(err)
				}
			}
		})
	}
}
