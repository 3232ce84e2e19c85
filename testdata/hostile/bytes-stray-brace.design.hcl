site {
}
}
