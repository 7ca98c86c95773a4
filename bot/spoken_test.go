package bot_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// spoken is what the sources say to a crew, each sentence with the place that
// says it.
type spoken struct {
	sentences map[string]string
	filled    map[string]bool   // those whose parts say fills in
	whys      map[string]string // the reasons of the calculator's errors
	lost      []string          // calls of say whose sentence cannot be told
	fset      *token.FileSet
	globals   map[string]ast.Expr // package-level constants and variables
	silent    map[*ast.BasicLit]bool
	literals  map[*ast.BasicLit]string
}

// listen reads the sources of package bot, of what draws its scenes and writes
// its day's sheet, and of the calculator as far as its errors are worded.
func listen(t *testing.T) *spoken {
	t.Helper()
	s := &spoken{
		sentences: map[string]string{}, filled: map[string]bool{}, whys: map[string]string{}, fset: token.NewFileSet(),
		silent: map[*ast.BasicLit]bool{}, literals: map[*ast.BasicLit]string{},
	}
	for dir, files := range sources(t, "../calc") {
		s.hearReasons(s.parse(t, dir, files))
	}
	for _, dir := range []string{".", "picture", "sheet"} {
		files, err := filepath.Glob(filepath.Join(dir, "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range s.parse(t, dir, files) {
			s.hear(f)
		}
	}
	return s
}

// sources are the Go files below a directory, by their own directories.
func sources(t *testing.T, root string) map[string][]string {
	t.Helper()
	out := map[string][]string{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(path, ".go") {
			out[filepath.Dir(path)] = append(out[filepath.Dir(path)], path)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// parse reads the files of one package, but not its tests, and its globals.
func (s *spoken) parse(t *testing.T, dir string, paths []string) []*ast.File {
	t.Helper()
	s.globals = map[string]ast.Expr{}
	var files []*ast.File
	for _, p := range paths {
		if strings.HasSuffix(p, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(s.fset, p, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, f)
		for _, d := range f.Decls {
			g, ok := d.(*ast.GenDecl)
			if !ok {
				continue
			}
			for _, spec := range g.Specs {
				if v, ok := spec.(*ast.ValueSpec); ok {
					for i, name := range v.Names {
						if i < len(v.Values) {
							s.globals[name.Name] = v.Values[i]
						}
					}
				}
			}
		}
	}
	if len(files) == 0 {
		t.Fatalf("no sources in %s", dir)
	}
	return files
}

// hear collects what the functions of a file hand to say and word.
func (s *spoken) hear(f *ast.File) {
	for _, d := range f.Decls {
		fn, ok := d.(*ast.FuncDecl)
		if ok && slices.Contains([]string{"say", "word", "own", "Say", "Word"}, fn.Name.Name) {
			continue // they only pass on what they were given
		}
		ast.Inspect(d, func(n ast.Node) bool {
			call, ok := n.(*ast.CallExpr)
			if !ok {
				return true
			}
			sel, ok := call.Fun.(*ast.SelectorExpr)
			if !ok {
				return true
			}
			switch sel.Sel.Name {
			case "say", "word", "Say", "Word":
				said := map[string]string{}
				s.resolve(call.Args[0], d, said)
				for text, at := range said {
					s.sentences[text] = at
					s.filled[text] = s.filled[text] || strings.EqualFold(sel.Sel.Name, "say")
				}
			case "New", "Errorf", "ErrorContext":
				s.silence(call) // for whoever runs the program
			}
			return true
		})
		ast.Inspect(d, s.note)
	}
}

// note remembers every literal, with its place.
func (s *spoken) note(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.ImportSpec, *ast.StructType: // its tags
		return false
	case *ast.BasicLit:
		if n.Kind == token.STRING {
			s.literals[n] = s.at(n)
		}
	}
	return true
}

func (s *spoken) silence(n ast.Node) {
	ast.Inspect(n, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok {
			s.silent[lit] = true
		}
		return true
	})
}

// resolve finds what an expression can be: a literal, a constant, an entry of
// a map, or a variable of the function that was given one of these.
func (s *spoken) resolve(e ast.Expr, within ast.Node, into map[string]string) {
	switch e := e.(type) {
	case *ast.BasicLit:
		if v, err := strconv.Unquote(e.Value); err == nil && v != "" {
			into[v] = s.at(e)
		}
	case *ast.CompositeLit:
		for _, el := range e.Elts {
			if kv, ok := el.(*ast.KeyValueExpr); ok {
				el = kv.Value
			}
			s.resolve(el, within, into)
		}
	case *ast.IndexExpr:
		s.resolve(e.X, within, into)
	case *ast.SelectorExpr:
		if e.Sel.Name != "Why" {
			s.lost = append(s.lost, s.at(e))
			return
		}
		for why, at := range s.whys {
			into[why] = at
		}
	case *ast.Ident:
		s.resolveName(e, within, into)
	default:
		s.lost = append(s.lost, s.at(e))
	}
}

func (s *spoken) resolveName(e *ast.Ident, within ast.Node, into map[string]string) {
	if v := s.globals[e.Name]; v != nil {
		s.resolve(v, within, into)
		return
	}
	given := valuesOf(e.Name, within)
	if len(given) == 0 {
		s.lost = append(s.lost, s.at(e))
	}
	for _, v := range given {
		s.resolve(v, within, into)
	}
}

// valuesOf are the expressions that a variable of a function is given.
func valuesOf(name string, within ast.Node) (given []ast.Expr) {
	is := func(e ast.Expr) bool {
		id, ok := e.(*ast.Ident)
		return ok && id.Name == name
	}
	ast.Inspect(within, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			for i, l := range n.Lhs {
				if is(l) && len(n.Lhs) == len(n.Rhs) {
					given = append(given, n.Rhs[i])
				}
			}
		case *ast.RangeStmt:
			if n.Value != nil && is(n.Value) {
				given = append(given, n.X)
			}
		}
		return true
	})
	return given
}

func (s *spoken) at(n ast.Node) string {
	p := s.fset.Position(n.Pos())
	return fmt.Sprintf("%s:%d", p.Filename, p.Line)
}
