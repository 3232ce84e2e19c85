// Package rules embeds the codebooks that come with the program, and does
// nothing else. Each top-level folder is one codebook, named by its folder: see
// codebook.hcl in it. Rules live in BOOK/RULE/ with their tests and examples.
package rules

import "embed"

// Books holds the embedded codebooks, one folder each.
//
//go:embed all:datasheet all:iec all:limits all:marine all:practice all:us_2023 all:vehicle
var Books embed.FS
