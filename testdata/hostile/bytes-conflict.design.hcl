site {
<<<<<<< HEAD
  coldest = "-27 degC"
||||||| base
  coldest = "-20 degC"
=======
  coldest = "-30 degC"
>>>>>>> theirs
}
