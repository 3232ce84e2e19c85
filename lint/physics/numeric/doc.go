// Package numeric holds the few numerical methods that the physics packages
// share: roots of one variable and the Lambert W function. Each cites its source.
//
// Use [Root] where a sign change brackets the root, [RootNewton] where the
// derivative is cheap as well, and [LambertExp] for w e^w = e^x with any finite x.
//
// Nothing here panics, loops without end or gives a NaN without an error.
package numeric
