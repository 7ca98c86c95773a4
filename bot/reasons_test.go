package bot_test

import "go/ast"

// hearReasons collects what stands behind Why in the calculator, and what its
// helpers are given as their parameter why.
func (s *spoken) hearReasons(files []*ast.File) {
	for _, f := range files {
		helpers := map[string]bool{}
		ast.Inspect(f, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.FuncDecl:
				helpers[n.Name.Name] = helpers[n.Name.Name] || takesWhy(n.Type)
			case *ast.AssignStmt:
				if fn, ok := n.Rhs[0].(*ast.FuncLit); ok && takesWhy(fn.Type) {
					helpers[n.Lhs[0].(*ast.Ident).Name] = true
				}
			}
			return true
		})
		ast.Inspect(f, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.KeyValueExpr:
				if key, ok := n.Key.(*ast.Ident); ok && key.Name == "Why" {
					s.reason(n.Value)
				}
			case *ast.CallExpr:
				if id, ok := n.Fun.(*ast.Ident); ok && helpers[id.Name] {
					s.reason(n.Args[len(n.Args)-1])
				}
			}
			return true
		})
	}
}

// reason adds one, unless it is passed on from elsewhere.
func (s *spoken) reason(e ast.Expr) {
	id, named := e.(*ast.Ident)
	_, literal := e.(*ast.BasicLit)
	if literal || named && s.globals[id.Name] != nil {
		s.resolve(e, nil, s.whys)
	}
}

func takesWhy(f *ast.FuncType) bool {
	all := f.Params.List
	if len(all) == 0 {
		return false
	}
	last := all[len(all)-1].Names
	return len(last) > 0 && last[len(last)-1].Name == "why"
}
