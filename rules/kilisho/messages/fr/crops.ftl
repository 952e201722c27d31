# of 637a42a5, reviewed: false
crops-maize-name = Maïs
# of e09e8813, reviewed: false
crops-maize-handling-1 = La moitié avant ou pendant le semis, dans le sillon et recouverte ; l'autre moitié quand les plants arrivent au genou, le long des lignes.
# of d6653e9b, reviewed: false
crops-sorghum_millet-name = Sorgho et mil
# of 1b9bc7b7, reviewed: false
crops-rice-name = Riz
# of d8b1cc53, reviewed: false
crops-rice-handling-1 = Incorporez-le au sol drainé avant le repiquage ; dans l'eau stagnante, une grande partie de l'ammonium se perd dans l'air.
# of 29fd9a2f, reviewed: false
crops-wheat-name = Blé et orge
# of ef2a3220, reviewed: false
crops-beans-name = Haricots, niébé et autres légumineuses à graines
# of a0be691f, reviewed: false
crops-beans-handling-1 = Un peu avant le semis tout au plus ; donnez le digestat aux cultures qui ont besoin d'azote.
# of 6d61374d, reviewed: false
crops-potato-name = Pomme de terre
# of 8f2576bd, reviewed: false
crops-potato-handling-1 = Avant la plantation, recouvert de terre ; rien une fois que les tubercules se forment.
# of 54185dae, reviewed: false
crops-sweet_potato-name = Patate douce
# of 6137697f, reviewed: false
crops-sweet_potato-handling-1 = Avant la plantation seulement ; un azote tardif fait des lianes.
# of b5cc7692, reviewed: false
crops-cassava-name = Manioc
# of ba76ee85, reviewed: false
crops-leafy_vegetables-name = Légumes-feuilles (chou, chou frisé, amarante, salades)
# of d0d85409, reviewed: false
crops-leafy_vegetables-handling-1 = Dans le sol avant la plantation, jamais sur des feuilles qui seront mangées.
# of f2eb1050, reviewed: false
crops-tomato_pepper-name = Tomate, poivron, piment et autres légumes-fruits
# of 8decb371, reviewed: false
crops-tomato_pepper-handling-1 = Dans le sol avant la plantation ; les plants tuteurés gardent les fruits loin du sol.
# of 9bb08573, reviewed: false
crops-root_vegetables-name = Carotte, oignon, betterave et radis
# of 8f7cd46d, reviewed: false
crops-root_vegetables-handling-1 = À la culture qui les précède plutôt qu'à eux-mêmes.
# of 75464029, reviewed: false
crops-banana-name = Banane et banane plantain
# of 67e270ae, reviewed: false
crops-banana-description = Considérée comme mangée crue ; indiquez eaten_raw false là où tout est cuit.
# of a785afa5, reviewed: false
crops-banana-handling-1 = Dans un anneau creusé autour de la touffe et recouvert.
# of 0bc1f210, reviewed: false
crops-fruit_trees-name = Arbres fruitiers (manguier, avocatier, agrumes, papayer)
# of 3e8ebe7e, reviewed: false
crops-fruit_trees-handling-1 = Après la récolte, dans un anneau sous le bord de la couronne et recouvert ; un fruit tombé sur un sol qui a reçu du digestat ne doit pas être mangé cru.
# of b0e1f06c, reviewed: false
crops-coffee-name = Café
# of 9705c298, reviewed: false
crops-coffee-handling-1 = Dans une tranchée à l'aplomb du bord de la couronne, en deux ou trois fois pendant les pluies.
# of 017979e8, reviewed: false
crops-tea-name = Thé
# of aa224535, reviewed: false
crops-tea-handling-1 = Après la cueillette, entre les lignes et recouvert.
# of ad32d6a3, reviewed: false
crops-sugarcane-name = Canne à sucre
# of 341c5389, reviewed: false
crops-napier_grass-name = Herbe à éléphant (napier)
# of d5e0cabc, reviewed: false
crops-napier_grass-handling-1 = Après chaque coupe, le long des lignes ; la coupe suivante vient après le délai d'attente.
# of a0b4d70c, reviewed: false
crops-pasture-name = Pâturage et herbe de coupe
# of 5e6425a9, reviewed: false
crops-pasture-handling-1 = Sur herbe courte après une coupe ou un pâturage ; tenez les animaux à l'écart jusqu'à la fin du délai d'attente.
